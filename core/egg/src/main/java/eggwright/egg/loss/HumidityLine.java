package eggwright.egg.loss;

import eggwright.egg.shell.Conductance;
import eggwright.egg.shell.Diffusion;
import eggwright.units.Mass;

/**
 * The final loss as a function of the humidity to come: a straight line, so that it is asked in both directions. Equations
 * (4.2) and (4.3) of {@code docs/models/weight-loss.md}.
 *
 * @param pctWhenDry final loss, in percent of the base mass, in air without any vapour
 * @param pctLessPerPoint how much less of it for each point of relative humidity; above 0
 */
public record HumidityLine(double pctWhenDry, double pctLessPerPoint) {
    private static final double MILLIGRAMS = 1000;

    /**
     * The line of some eggs.
     *
     * @param base mass of which the loss is a percentage: at set, or at lay where storage counts
     * @param now mass of the same eggs
     * @param shell their conductance together, at the reference conditions
     * @param diffusion the same that the conductance was measured with
     */
    public static HumidityLine of(Mass base, Mass now, Conductance shell, Ahead ahead, Diffusion diffusion) {
        double soFar = new WaterLost(base, now).grams();
        double gramsPerExposure = shell.milligramsPerDayKilopascal() / MILLIGRAMS;
        double weight = ahead.weightDays(diffusion);
        double dry = soFar + gramsPerExposure * (weight * ahead.eggKilopascals() + ahead.fixedExposure(diffusion));
        double perPoint = gramsPerExposure * weight * ahead.airKilopascals() / 100;
        return new HumidityLine(100 * dry / base.grams(), 100 * perPoint / base.grams());
    }

    /** Final loss, in percent of the base mass, at this relative humidity in percent. */
    public double lossPct(double humidityPct) {
        return pctWhenDry - pctLessPerPoint * humidityPct;
    }

    /**
     * The relative humidity, in percent, that gives this final loss: plain algebra, which may lie outside what air can
     * hold or eggs can bear. {@link HumidityAdvice} keeps it inside.
     */
    public double humidityPct(double finalLossPct) {
        return (pctWhenDry - finalLossPct) / pctLessPerPoint;
    }
}
