package eggwright.climate.sensor;

import eggwright.climate.reading.Logger;
import eggwright.climate.reading.Readings;
import java.util.SplittableRandom;

/**
 * What a sensor in good order writes every five minutes in a machine that holds its air as well as any: it wavers by hundredths of a
 * degree, follows the day and the weeks a little, is opened once a week for the set, and is retuned once.
 */
final class SteadyAir {
    static final int STEP_SECONDS = 300;
    static final int A_DAY = 288;

    private final SplittableRandom random;
    private final double waver;
    private final double daily;
    private final double weekly;
    private final int retunedOn;
    private final double retuned;
    private final int setAt;

    SteadyAir(long seed) {
        random = new SplittableRandom(seed);
        waver = random.nextDouble(0.01, 0.06);
        daily = random.nextDouble(0, 0.1);
        weekly = random.nextDouble(0, 0.08);
        retunedOn = random.nextInt(20, 100) * A_DAY;
        retuned = random.nextInt(-2, 3) / 10.0;
        setAt = random.nextInt(7 * A_DAY);
    }

    /** @param step in which it reads, in °C */
    Readings days(int days, double step) {
        var values = new double[days * A_DAY];
        double held = random.nextDouble(37.2, 37.9);
        double noise = 0;
        double dip = 0;
        for (int i = 0; i < values.length; i++) {
            noise = 0.95 * noise + Math.sqrt(1 - 0.95 * 0.95) * waver * random.nextGaussian();
            dip = i % (7 * A_DAY) == setAt ? 2.5 : dip * 0.75;
            double air = held
                    + (i >= retunedOn ? retuned : 0)
                    + daily * Math.sin(2 * Math.PI * i / A_DAY)
                    + weekly * Math.sin(2 * Math.PI * i / (23.0 * A_DAY))
                    + noise
                    - dip;
            values[i] = Math.rint(air / step) * step;
        }
        return Logger.every(STEP_SECONDS, values);
    }
}
