package eggwright.book.entry;

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
 */
public record HabitsNoted(
        @Nullable String farmName,
        @Nullable String timeZone,
        @Nullable DayOfWeek setWeekday,
        @Nullable LocalTime setHour,
        @Nullable List<Integer> candlingDays,
        @Nullable List<LocalTime> rounds,
        @Nullable LocalTime workHour)
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
                        "\"" + timeZone + "\" is not a time zone. It looks like America/Chicago or Europe/London.");
            }
        }
        if (candlingDays != null) {
            candlingDays = List.copyOf(candlingDays);
            for (int day : candlingDays) {
                OutOfRange.check("Candling day", day, 1, 40, "days");
            }
        }
        rounds = rounds == null ? null : List.copyOf(rounds);
    }
}
