package eggwright.intake.file;

import eggwright.book.name.MachineName;
import eggwright.book.picture.Picture;
import eggwright.climate.reading.ReadingPlace;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * What of a farm has to be known to place its readings.
 *
 * @param machines their names
 * @param zone of times that say no offset
 */
public record FarmPlaces(List<String> machines, ZoneId zone) {
    public static final String EGG_ROOM = "egg room";
    public static final String BROODER = "brooder";

    public FarmPlaces {
        machines = List.copyOf(machines);
    }

    public static FarmPlaces of(Picture picture) {
        return new FarmPlaces(
                picture.machines().keySet().stream().map(MachineName::text).toList(),
                picture.farm().habits().clock().zoneOr(ZoneOffset.UTC));
    }

    /** The place that a name means, in small or capital letters; empty where the farm has none of it. */
    public Optional<ReadingPlace> named(String name) {
        if (name.equalsIgnoreCase(EGG_ROOM)) {
            return Optional.of(new ReadingPlace.EggRoom());
        }
        if (name.equalsIgnoreCase(BROODER)) {
            return Optional.of(new ReadingPlace.Brooder());
        }
        return machines.stream()
                .filter(m -> m.equals(name))
                .findFirst()
                .or(() ->
                        machines.stream().filter(m -> m.equalsIgnoreCase(name)).findFirst())
                .map(machine -> new ReadingPlace.InMachine(new MachineName(machine)));
    }

    /** What a place is called. */
    public static String name(ReadingPlace place) {
        return switch (place) {
            case ReadingPlace.InMachine(var machine) -> machine.text();
            case ReadingPlace.EggRoom() -> EGG_ROOM;
            case ReadingPlace.Brooder() -> BROODER;
        };
    }
}
