package eggwright.climate.weight;

import eggwright.climate.air.AirHour;
import eggwright.egg.air.MoistAir;
import eggwright.egg.loss.Spell;
import eggwright.egg.shell.Diffusion;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * What drew water from the eggs, in kPa days since the set: X of equation (4.1) of {@code docs/models/weight-loss.md}, with
 * the egg as warm as the air.
 */
final class Exposure {
    static final Diffusion DIFFUSION = Diffusion.OF_VAPOUR;

    private static final double MILLIS_PER_DAY = 86_400_000.0;

    private final List<AirHour> air;
    private final double[] until;

    /** @param air without gaps from the set on */
    Exposure(List<AirHour> air) {
        this.air = air;
        this.until = new double[air.size() + 1];
        for (int i = 0; i < air.size(); i++) {
            var hour = air.get(i);
            until[i + 1] = until[i] + perDay(hour.air()) * days(hour.from(), hour.to());
        }
    }

    /** kPa days for each day in this air; 0 where it is as wet as an egg is inside. */
    static double perDay(MoistAir air) {
        return perDay(air, air.temperature());
    }

    private static double perDay(MoistAir air, Temperature egg) {
        if (air.humidity().pct() >= 99.9) {
            return 0;
        }
        return new Spell(1, air, egg).exposureKilopascalDays(DIFFUSION);
    }

    /** From the set to an instant; an instant outside what is known counts as its nearer end. */
    double at(Instant instant) {
        if (air.isEmpty() || !instant.isAfter(air.getFirst().from())) {
            return 0;
        }
        for (int i = 0; i < air.size(); i++) {
            var hour = air.get(i);
            if (instant.isBefore(hour.to())) {
                double part = days(hour.from(), instant) / days(hour.from(), hour.to());
                return until[i] + part * (until[i + 1] - until[i]);
            }
        }
        return until[air.size()];
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / MILLIS_PER_DAY;
    }
}
