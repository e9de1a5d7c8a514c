package eggwright.egg.loss;

import eggwright.units.Humidity;

/** The humidity to run from now on, inside what is safe, and what comes of it. */
public sealed interface HumidityAdvice {
    /** The humidity to run, always inside the limits. */
    Humidity humidity();

    /** Final loss that it gives, in percent of the base mass. */
    double lossPct();

    /** It lands on the wanted loss. */
    record Reachable(Humidity humidity, double lossPct) implements HumidityAdvice {}

    /** The wanted loss cannot be reached; this is the nearest that can. */
    record OutOfReach(Why why, Humidity humidity, double lossPct) implements HumidityAdvice {}

    /** Why a wanted loss cannot be reached. */
    enum Why {
        /** They have lost as much, or more, already. */
        LOST_ALREADY,
        /** The air would have to be wetter than is safe. */
        TOO_WET,
        /** The air would have to be drier than is safe. */
        TOO_DRY,
        /** The room's air is too wet for the machine to get that dry. */
        ROOM_TOO_WET
    }

    /**
     * The advice for eggs on this line.
     *
     * @param lossSoFarPct of the base mass
     * @param wantedPct final loss, in percent of the base mass
     */
    static HumidityAdvice of(HumidityLine line, double lossSoFarPct, double wantedPct, SafeLimits limits) {
        double needed = line.humidityPct(wantedPct);
        var humidity = limits.nearest(needed);
        double loss = line.lossPct(humidity.pct());
        if (limits.hold(needed)) {
            return new Reachable(humidity, loss);
        }
        return new OutOfReach(why(needed, lossSoFarPct, wantedPct, limits), humidity, loss);
    }

    private static Why why(double needed, double soFar, double wanted, SafeLimits limits) {
        if (soFar >= wanted) {
            return Why.LOST_ALREADY;
        }
        if (needed > limits.high().pct()) {
            return Why.TOO_WET;
        }
        return switch (limits.lowIs()) {
            case SAFETY -> Why.TOO_DRY;
            case ROOM -> Why.ROOM_TOO_WET;
        };
    }
}
