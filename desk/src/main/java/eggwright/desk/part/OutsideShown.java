package eggwright.desk.part;

import java.util.List;

/**
 * Places that are outside their band now, as every open page shows them.
 *
 * @param key changes only where another place leaves its band: then it is said aloud again
 * @param places longest outside first; empty where all is well
 */
public record OutsideShown(String key, List<Place> places) {
    public static final OutsideShown NOTHING = new OutsideShown("", List.of());

    public OutsideShown {
        places = List.copyOf(places);
    }

    /**
     * One place.
     *
     * @param path of its page
     */
    public record Place(String text, String path) {}
}
