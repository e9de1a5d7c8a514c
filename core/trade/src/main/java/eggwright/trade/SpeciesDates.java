package eggwright.trade;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * When each piece of work on a set falls due.
 *
 * <p>Day n is the date n days after the farm-local date of the set; the local hour of the set is kept, also across a
 * change of the clocks (an hour that the clocks skip becomes the next one). With an offset only, the offset stays.
 * Fractions of a day are added on the local clock and rounded to the minute.
 *
 * <p>First external pip: day 22.5 of a 24-day period (day 20 of 21 for chicken), from memory, in proportion. Hatch
 * window: the shortest to the longest period that the followed source gives; where it gives one figure, half a day
 * either side, from memory. Take-off: the end of the window, when no chick has waited much more than a day (pull 1 to
 * 24 h after hatching: MSU-REMOVAL, seen). Each value and its source: {@link SpeciesProfile}.
 *
 * @param set when the eggs went into the heat
 * @param looks the looks that the day sheet asks for
 * @param customaryLooks the looks of the fuller custom
 */
public record SpeciesDates(
        ZonedDateTime set,
        List<ZonedDateTime> looks,
        List<ZonedDateTime> customaryLooks,
        ZonedDateTime lastTurn,
        ZonedDateTime transfer,
        ZonedDateTime firstPip,
        ZonedDateTime hatchFrom,
        ZonedDateTime hatchTo,
        ZonedDateTime takeOff) {
    private static final double MINUTES_PER_DAY = 24 * 60.0;

    public SpeciesDates {
        looks = List.copyOf(looks);
        customaryLooks = List.copyOf(customaryLooks);
    }

    /** Dates where only the offset of the farm is known: it is kept throughout. */
    public static SpeciesDates of(SpeciesProfile profile, OffsetDateTime set) {
        return of(profile, set.toZonedDateTime());
    }

    /** Dates in the farm's own zone. */
    public static SpeciesDates of(SpeciesProfile profile, ZonedDateTime set) {
        var window = profile.hatchWindowDays().value();
        var to = day(set, window.high());
        return new SpeciesDates(
                set,
                profile.candlingDays().value().stream().map(n -> day(set, n)).toList(),
                profile.customaryCandlingDays().value().stream()
                        .map(n -> day(set, n))
                        .toList(),
                day(set, profile.lastTurnDay().value()),
                day(set, profile.transferDay().value()),
                day(set, profile.firstPipDay().value()),
                day(set, window.low()),
                to,
                to);
    }

    /** Day {@code days} of a set, at the local hour of the set. */
    public static ZonedDateTime day(ZonedDateTime set, double days) {
        long whole = (long) Math.floor(days);
        long minutes = Math.round((days - whole) * MINUTES_PER_DAY);
        var local = set.toLocalDateTime().plusDays(whole).plusMinutes(minutes);
        return ZonedDateTime.ofLocal(local, set.getZone(), set.getOffset());
    }

    /** Which day an instant is for a set: the difference of the farm-local dates; below 0 before the set. */
    public static long dayNumber(ZonedDateTime set, Instant at) {
        return ChronoUnit.DAYS.between(
                set.toLocalDate(), at.atZone(set.getZone()).toLocalDate());
    }
}
