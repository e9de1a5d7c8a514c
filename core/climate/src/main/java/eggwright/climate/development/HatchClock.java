package eggwright.climate.development;

import eggwright.climate.development.Clock.Pace;
import eggwright.trade.SpeciesProfile;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Says when a set will hatch, from the warmth of its eggs. The period is the species' own at the temperature that its
 * handbook sets: eggs that had that, fresh, hatch by the plain calendar.
 *
 * <p>Storage: an hour later for each day beyond the first (Mather and Laughlin 1976, Br. Poultry Science 17:471, from
 * memory), between half an hour and 1.7 hours (a broiler trial with counts every six hours gave 12 hours at seven days: abstract seen).
 */
public final class HatchClock {
    private static final Span HOURS_PER_STORED_DAY = new Span(0.5, 1, 1.7);
    private static final double FRESH_DAYS = 1;
    /** Ten in a hundred lie beyond, on either side. */
    private static final double DEVIATIONS = 1.2816;

    private static final double MILLIS_PER_DAY = 86_400_000.0;
    private static final double SECONDS_PER_HOUR = 3600;

    private HatchClock() {}

    /**
     * @param set when the eggs went into the heat
     * @param eggs what they had since, in time order; silence is filled with {@code ahead}
     * @param ahead what they will have, and had where nothing is known
     * @param storedDays from lay to set, in the middle of the set; 0 where not known
     */
    public static HatchExpected of(
            SpeciesProfile profile,
            Instant set,
            Instant now,
            List<Warmth> eggs,
            Temperature ahead,
            double storedDays,
            Learnt learnt) {
        OutOfRange.check("Days stored", storedDays, 0, 120, "days");
        double period = profile.periodDays().value();
        var clock = new Clock(set, period, profile.setterTemperature().value().celsius(), eggs, ahead.celsius());
        var window = profile.hatchWindowDays().value();
        var stored = hoursForStorage(storedDays);
        double unsure = DEVIATIONS * learnt.deviationHours();
        var shift = new Span(
                stored.low() + learnt.hours() - unsure,
                stored.likely() + learnt.hours(),
                stored.high() + learnt.hours() + unsure);
        double half = middleDays(profile);
        var middle = when(clock, half / period, shift);
        return new HatchExpected(
                when(clock, profile.firstPipDay().value() / period, shift),
                when(clock, window.low() / period, shift),
                middle,
                when(clock, window.high() / period, shift),
                later(set.plusMillis(Math.round(half * MILLIS_PER_DAY)), middle),
                new Span(clock.at(now, Pace.SLOW), clock.at(now, Pace.LIKELY), clock.at(now, Pace.FAST)));
    }

    /**
     * By how many hours storage makes a hatch later.
     *
     * @param storedDays from lay to set; 0 where not known
     */
    public static Span hoursForStorage(double storedDays) {
        double days = Math.max(0, storedDays - FRESH_DAYS);
        return new Span(
                HOURS_PER_STORED_DAY.low() * days,
                HOURS_PER_STORED_DAY.likely() * days,
                HOURS_PER_STORED_DAY.high() * days);
    }

    /** Days from the set to the middle of the species' hatch window, by the plain calendar. */
    public static double middleDays(SpeciesProfile profile) {
        var window = profile.hatchWindowDays().value();
        return (window.low() + window.high()) / 2;
    }

    private static When when(Clock clock, double share, Span hours) {
        return new When(
                        clock.reaches(share, Pace.FAST),
                        clock.reaches(share, Pace.LIKELY),
                        clock.reaches(share, Pace.SLOW))
                .plus(hours(hours.low()), hours(hours.likely()), hours(hours.high()));
    }

    private static Duration hours(double hours) {
        return Duration.ofSeconds(Math.round(hours * SECONDS_PER_HOUR));
    }

    private static Span later(Instant calendar, When middle) {
        return new Span(
                between(calendar, middle.early()),
                between(calendar, middle.likely()),
                between(calendar, middle.late()));
    }

    private static double between(Instant from, Instant to) {
        return Duration.between(from, to).toSeconds() / SECONDS_PER_HOUR;
    }
}
