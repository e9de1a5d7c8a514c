package eggwright.desk.machine;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.ReadingPlace;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Where the pages of the machines are. */
public final class MachinePaths {
    static final String ALL = "/machines";
    static final String WET_BULB_TABLE = ALL + "/wet-bulb-table";

    static final String EGG_ROOM = "/air/egg-room";
    static final String BROODER = "/air/brooder";
    static final String SENSORS = "/sensors";

    private MachinePaths() {}

    /** The page of one machine. */
    public static String of(MachineName machine) {
        return ALL + "/" + encoded(machine.text());
    }

    /** The page of a place that has sensors. */
    static String of(ReadingPlace place) {
        return switch (place) {
            case ReadingPlace.InMachine(var machine) -> of(machine);
            case ReadingPlace.EggRoom room -> EGG_ROOM;
            case ReadingPlace.Brooder brooder -> BROODER;
        };
    }

    /** The page of the sensors of one place. */
    public static String sensors(ReadingPlace place) {
        return switch (place) {
            case ReadingPlace.InMachine(var machine) -> of(machine) + SENSORS;
            case ReadingPlace.EggRoom() -> "/egg-room" + SENSORS;
            case ReadingPlace.Brooder() -> "/brooder" + SENSORS;
        };
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
