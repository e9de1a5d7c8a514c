package eggwright.book.picture;

import eggwright.book.entry.WetBulbAir;
import eggwright.units.Altitude;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the farm does things: the last word on each matter.
 *
 * @param farmName empty where not yet named
 * @param clock by which the farm lives
 * @param setWeekday absent where no fixed day was noted
 * @param candlingDays absent: the custom of the species
 * @param trayRows eggs in each row of a tray, from the front; empty where trays are not told by place
 * @param minutesOut for how many minutes a tray may be out of the heat; absent: what the trade says
 * @param altitude of the farm above the sea; absent until noted, when sea level is taken and said
 * @param wetBulbAir what its wet bulbs stand in; moving air until noted
 */
public record Habits(
        String farmName,
        FarmClock clock,
        @Nullable DayOfWeek setWeekday,
        LocalTime setHour,
        @Nullable List<Integer> candlingDays,
        List<LocalTime> rounds,
        LocalTime workHour,
        List<Integer> trayRows,
        @Nullable Integer minutesOut,
        @Nullable Altitude altitude,
        WetBulbAir wetBulbAir) {
    /** Until the farm says otherwise: sets go in at 8, rounds at 7 and 19, work at the lamp at 19 (common practice, no source). */
    public static final Habits CUSTOM = new Habits(
            "",
            FarmClock.NOT_NOTED,
            null,
            LocalTime.of(8, 0),
            null,
            List.of(LocalTime.of(7, 0), LocalTime.of(19, 0)),
            LocalTime.of(19, 0),
            List.of(),
            null,
            null,
            WetBulbAir.MOVING);

    public Habits {
        candlingDays = candlingDays == null ? null : List.copyOf(candlingDays);
        rounds = List.copyOf(rounds);
        trayRows = List.copyOf(trayRows);
    }
}
