package eggwright.book.entry;

import eggwright.units.Altitude;
import eggwright.units.OutOfRange;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How this farm does things. An absent part leaves what was noted before.
 *
 * @param timeZone of the IANA database, such as America/Chicago
 * @param setWeekday the weekday on which sets go in
 * @param setHour local hour at which sets go in
 * @param candlingDays days of incubation on which trays are candled; empty: never
 * @param rounds local hours of the daily rounds
 * @param workHour local hour at which candling and transfer are done
 * @param trayRows how many eggs lie in each row of a tray, from the front; empty: trays are not told by place
 * @param minutesOut for how many minutes a tray may be out of the heat
 * @param altitude of the farm above the sea, as a map gives it
 * @param wetBulbAir what the wet bulbs of its machines stand in
 */
public record HabitsNoted(
        @Nullable String farmName,
        @Nullable String timeZone,
        @Nullable DayOfWeek setWeekday,
        @Nullable LocalTime setHour,
        @Nullable List<Integer> candlingDays,
        @Nullable List<LocalTime> rounds,
        @Nullable LocalTime workHour,
        @Nullable List<Integer> trayRows,
        @Nullable Integer minutesOut,
        @Nullable Altitude altitude,
        @Nullable WetBulbAir wetBulbAir)
        implements Payload {
    public HabitsNoted {
        if (farmName != null) {
            farmName = Checks.text("Farm name", farmName);
        }
        if (timeZone != null) {
            try {
                timeZone = ZoneId.of(timeZone).getId();
            } catch (DateTimeException unknown) {
                throw new OutOfRange(
                        EntryReason.NOT_A_TIME_ZONE,
                        "\"" + timeZone + "\" is not a time zone. It looks like America/Chicago or Europe/London.",
                        timeZone);
            }
        }
        if (candlingDays != null) {
            candlingDays = List.copyOf(candlingDays);
            for (int day : candlingDays) {
                Checks.within(EntryReason.CANDLING_DAY_OUTSIDE, "Candling day", day, 1, 40);
            }
        }
        rounds = rounds == null ? null : List.copyOf(rounds);
        if (trayRows != null) {
            trayRows = List.copyOf(trayRows);
            for (int eggs : trayRows) {
                Checks.within(EntryReason.TRAY_ROW_OUTSIDE, "Eggs in a row of the tray", eggs, 1, 60);
            }
        }
        if (minutesOut != null) {
            Checks.within(EntryReason.MINUTES_OUT_OUTSIDE, "Minutes out of the heat", minutesOut, 1, 240);
        }
    }

    /** Says nothing of trays, of the time out of the heat, and of the air. */
    public HabitsNoted(
            @Nullable String farmName,
            @Nullable String timeZone,
            @Nullable DayOfWeek setWeekday,
            @Nullable LocalTime setHour,
            @Nullable List<Integer> candlingDays,
            @Nullable List<LocalTime> rounds,
            @Nullable LocalTime workHour) {
        this(farmName, timeZone, setWeekday, setHour, candlingDays, rounds, workHour, null, null, null, null);
    }
}
