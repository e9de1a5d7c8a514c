package eggwright.climate.development;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Runs from 0 at the set to 1 at hatch, as fast as the eggs are warm. After what is known it runs on at one temperature.
 *
 * @param set when the eggs went into the heat
 * @param periodDays from set to hatch at the reference temperature
 * @param eggs what the eggs had since the set, in time order; where it is silent they are taken to have had {@code aheadCelsius}
 * @param aheadCelsius what eggs have where nothing else is known
 */
record Clock(Instant set, double periodDays, double referenceCelsius, List<Warmth> eggs, double aheadCelsius) {
    private static final double MILLIS_PER_DAY = 86_400_000.0;
    private static final Duration STEP = Duration.ofHours(6);
    /** No set is followed for longer. */
    private static final double MOST_PERIODS = 3;

    Clock {
        eggs = List.copyOf(eggs);
    }

    /** Which end of the span of rates it runs by. */
    enum Pace {
        SLOW,
        LIKELY,
        FAST
    }

    /** When a share of development is reached. */
    Instant reaches(double developed, Pace pace) {
        double done = 0;
        var at = set;
        int next = 0;
        var end = set.plusMillis(Math.round(MOST_PERIODS * periodDays * MILLIS_PER_DAY));
        while (done < developed && at.isBefore(end)) {
            while (next < eggs.size() && !eggs.get(next).to().isAfter(at)) {
                next++;
            }
            boolean isKnown = next < eggs.size() && !eggs.get(next).from().isAfter(at);
            double celsius = isKnown ? eggs.get(next).celsius() : aheadCelsius;
            var until = at.plus(STEP);
            if (next < eggs.size()) {
                var change = isKnown ? eggs.get(next).to() : eggs.get(next).from();
                until = change.isBefore(until) ? change : until;
            }
            double perMilli = rate(celsius, done, pace) / (periodDays * MILLIS_PER_DAY);
            double gained = perMilli * Duration.between(at, until).toMillis();
            if (done + gained >= developed) {
                return at.plusMillis((long) Math.ceil((developed - done) / perMilli));
            }
            done += gained;
            at = until;
        }
        return at;
    }

    /** How far it has come by an instant. */
    double at(Instant when, Pace pace) {
        double low = 0;
        double high = MOST_PERIODS;
        // Time of a share is monotone in the share.
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (reaches(middle, pace).isAfter(when)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private double rate(double celsius, double done, Pace pace) {
        var span = DevelopmentRate.at(Math.clamp(celsius, 0, 60), referenceCelsius, done);
        return switch (pace) {
            case SLOW -> span.low();
            case LIKELY -> span.likely();
            case FAST -> span.high();
        };
    }
}
