package eggwright.egg.loss;

import eggwright.units.OutOfRange;

/**
 * How well the eggs that are weighed stand for the eggs that they are to speak for. Shells of one flock differ by 15 %, so
 * that the mean of n of them is off by 15 %/sqrt(n), less where they are a large part of all (the usual correction for a
 * finite number), and not at all where all are weighed.
 *
 * @param weighed at least 1
 * @param standFor at least as many
 */
public record ShellSample(int weighed, int standFor) {
    /** Coefficient of variation between eggs: Meir, Nir and Ar 1984, 1,256 turkey eggs (abstract read). */
    public static final double SHELL_VARIATION = 0.15;

    public ShellSample {
        if (!(weighed >= 1 && standFor >= weighed)) {
            throw new OutOfRange(weighed + " eggs weighed cannot stand for " + standFor);
        }
    }

    /** Every egg is weighed, as in a whole tray that speaks for itself. */
    public static ShellSample ofAll(int eggs) {
        return new ShellSample(eggs, eggs);
    }

    /** Standard error of their mean conductance and loss, as a share of it. */
    public double variation() {
        if (weighed == standFor) {
            return 0;
        }
        double left = (double) (standFor - weighed) / (standFor - 1);
        return SHELL_VARIATION * Math.sqrt(left / weighed);
    }
}
