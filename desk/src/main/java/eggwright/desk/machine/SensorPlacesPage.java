package eggwright.desk.machine;

import java.util.List;

/** Every place with sensors. */
public record SensorPlacesPage(List<Place> places) {
    public SensorPlacesPage {
        places = List.copyOf(places);
    }

    /** @param state how many sensors hang there, and how many want a look */
    public record Place(String path, String name, String state) {}
}
