package eggwright.egg.loss;

import eggwright.egg.air.MoistAir;
import eggwright.units.Humidity;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;

/**
 * The humidities that a machine may be run at, and what sets the lower one.
 *
 * @param low the driest
 * @param high the wettest
 * @param lowIs what keeps the machine from going lower
 */
public record SafeLimits(Humidity low, Humidity high, Floor lowIs) {
    /** What the algebra may leave over, in points: far below any dial. */
    private static final double ROUNDING = 1e-9;

    /** What sets the lower limit. */
    public enum Floor {
        /** Drier air is not safe for the eggs. */
        SAFETY,
        /** Room air warmed in the machine is no drier; ventilation cannot help. */
        ROOM
    }

    public SafeLimits {
        if (!(low.pct() <= high.pct())) {
            throw new OutOfRange("The lower limit, " + low.pct() + " %, is above the upper one, " + high.pct() + " %");
        }
    }

    /** Limits for the eggs' sake. */
    public static SafeLimits of(double lowPct, double highPct) {
        return new SafeLimits(new Humidity(lowPct), new Humidity(highPct), Floor.SAFETY);
    }

    /** The same where the machine draws this room's air, which keeps its vapour when it is warmed. */
    public SafeLimits inRoom(MoistAir room, Temperature machine) {
        var floor = room.at(machine).humidity();
        return floor.pct() <= low.pct()
                ? this
                : new SafeLimits(new Humidity(Math.min(floor.pct(), high.pct())), high, Floor.ROOM);
    }

    /** Whether a humidity lies inside them. */
    public boolean hold(double pct) {
        return Math.abs(pct - nearest(pct).pct()) <= ROUNDING;
    }

    /** The nearest humidity inside the limits. */
    public Humidity nearest(double pct) {
        return new Humidity(Math.clamp(pct, low.pct(), high.pct()));
    }

    /**
     * Half of the way from what is run now towards what the algebra asks for, inside the limits: what to try for three
     * days, then weigh again, where the algebra asks for an extreme (common practice, no source).
     */
    public Humidity halfWay(Humidity now, double wantedPct) {
        return nearest((now.pct() + wantedPct) / 2);
    }
}
