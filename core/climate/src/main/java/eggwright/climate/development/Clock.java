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
        return run(developed, set.plusMillis(Math.round(MOST_PERIODS * periodDays * MILLIS_PER_DAY)), pace)
                .at();
    }

    /** How far it has come by an instant. */
    double at(Instant when, Pace pace) {
        return run(Double.POSITIVE_INFINITY, when, pace).developed();
    }

    private record Reached(Instant at, double developed) {}

    /** Runs until a share is reached, or an instant, whichever comes first. */
    private Reached run(double goal, Instant latest, Pace pace) {
        double done = 0;
        var at = set;
        int next = 0;
        while (done < goal && at.isBefore(latest)) {
            while (next < eggs.size() && !eggs.get(next).to().isAfter(at)) {
                next++;
            }
            boolean isKnown = next < eggs.size() && !eggs.get(next).from().isAfter(at);
            double celsius = isKnown ? eggs.get(next).celsius() : aheadCelsius;
            var until = earlier(at.plus(STEP), latest);
            if (next < eggs.size()) {
                until = earlier(isKnown ? eggs.get(next).to() : eggs.get(next).from(), until);
            }
            double perMilli = rate(celsius, done, pace) / (periodDays * MILLIS_PER_DAY);
            double gained = perMilli * Duration.between(at, until).toMillis();
            if (done + gained >= goal) {
                return new Reached(at.plusMillis((long) Math.ceil((goal - done) / perMilli)), goal);
            }
            done += gained;
            at = until;
        }
        return new Reached(at, done);
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
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
