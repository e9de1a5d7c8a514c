package eggwright.book.picture;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The clock on the farm's wall. It tells the date of everything that happened, whatever clock the device had that noted
 * it: a phone brought home from abroad changes no day. Until the farm's zone is noted, each note's own offset stands.
 *
 * @param zone absent until noted
 */
public record FarmClock(@Nullable ZoneId zone) {
    public static final FarmClock NOT_NOTED = new FarmClock(null);

    public static FarmClock of(ZoneId zone) {
        return new FarmClock(zone);
    }

    /** The same instant, as the farm's clock showed it. */
    public OffsetDateTime at(OffsetDateTime time) {
        return zone == null ? time : time.atZoneSameInstant(zone).toOffsetDateTime();
    }

    /** The farm-local date. */
    public LocalDate dateOf(OffsetDateTime time) {
        return at(time).toLocalDate();
    }

    /** Day n: the difference of farm-local dates. Day 0 is the date on which the set went in; before that it is negative. */
    public static int day(LocalDate setOn, LocalDate on) {
        return Math.toIntExact(ChronoUnit.DAYS.between(setOn, on));
    }

    /** The zone, where it was noted. */
    public Optional<ZoneId> zoneNoted() {
        return Optional.ofNullable(zone);
    }

    /** The zone; where none was noted, another. */
    public ZoneId zoneOr(ZoneId otherwise) {
        return zone == null ? otherwise : zone;
    }
}
