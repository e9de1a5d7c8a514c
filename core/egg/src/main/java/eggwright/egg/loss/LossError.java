package eggwright.egg.loss;

import eggwright.units.OutOfRange;

/**
 * How sure a loss is, so far and drawn on to a later day: first-order propagation of independent errors.
 *
 * @param massGrams standard error of each of the two masses, of the same eggs together or of their mean, as the masses are
 * @param shells whom the weighed eggs stand for
 */
public record LossError(double massGrams, ShellSample shells) {
    private static final double PERCENT = 100;

    public LossError {
        OutOfRange.check("Error of the scale", massGrams, 0, 1e6, "g");
    }

    /** Standard error of the loss so far, in percent of the base mass. */
    public double points(WaterLost lost) {
        return drawnOn(lost, 1);
    }

    /**
     * Standard error of the loss drawn on along its line.
     *
     * @param times how much longer the exposure will then have been than it was so far: 2.1 where day 10 is drawn on to
     *     day 21 and nothing changes; at least 1
     */
    public double drawnOn(WaterLost lost, double times) {
        OutOfRange.check("Times drawn on", times, 1, 1000, "times");
        double base = lost.before().grams();
        double share = lost.after().grams() / base;
        // Loss is 1 - Wb/W0: by Wb it moves as 1/W0, by W0 as Wb/W0 squared.
        double scale = massGrams / base * Math.hypot(1, share);
        double between = lost.grams() / base * shells.variation();
        return PERCENT * times * Math.hypot(scale, between);
    }
}
