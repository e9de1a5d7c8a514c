package eggwright.today.schedule;

import eggwright.book.picture.FarmClock;
import eggwright.book.picture.FarmPicture;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/** Which clock hangs on the wall of the farm. */
public final class FarmZone {
    private FarmZone() {}

    /** The zone that the farm noted; where it noted none, {@code otherwise}. */
    public static ZoneId of(FarmPicture farm, ZoneId otherwise) {
        return farm.habits().clock().zoneOr(otherwise);
    }

    /** The farm-local date of an instant. */
    public static LocalDate date(OffsetDateTime at, ZoneId zone) {
        return new FarmClock(zone).dateOf(at);
    }

    /**
     * The same local hour on another date, also across a change of the clocks; an hour that the clocks skip becomes the
     * next one.
     */
    public static ZonedDateTime sameHour(ZonedDateTime hour, LocalDate on) {
        return ZonedDateTime.of(on, hour.toLocalTime(), hour.getZone());
    }
}
