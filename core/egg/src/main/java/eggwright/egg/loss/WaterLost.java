package eggwright.egg.loss;

import eggwright.egg.shell.Conductance;
import eggwright.egg.shell.Diffusion;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import java.util.List;

/**
 * What eggs weighed at two times, tray taken off, and so the water that they lost: nearly all of what an egg loses is
 * water (Ar and Rahn 1980, Am. Zool. 20:373, read).
 *
 * @param before as the base of the percentage: at set, or at lay where storage counts
 * @param after of the same eggs
 */
public record WaterLost(Mass before, Mass after) {
    private static final double MILLIGRAMS = 1000;

    /**
     * @throws OutOfRange if the eggs weigh nothing, or more than before
     */
    public WaterLost {
        if (!(before.grams() > 0 && after.grams() > 0)) {
            throw new OutOfRange("Eggs that weigh nothing cannot be reckoned with: " + before + " before, " + after
                    + " after. Look at the tare");
        }
        if (!(after.grams() <= before.grams())) {
            throw new OutOfRange("The eggs weigh more now, " + after + ", than before, " + before
                    + ", and an egg never gains. Look whether the tray was taken off both times, whether the same eggs were"
                    + " weighed, and at the scale");
        }
    }

    public double grams() {
        return before.grams() - after.grams();
    }

    /**
     * The conductance that let it out, G* = (Wa - Wb)/X of equation (4.1), at the reference conditions.
     *
     * @param past every spell between the two weighings
     * @throws OutOfRange if nothing was lost
     */
    public Conductance through(List<Spell> past, Diffusion diffusion) {
        if (!(grams() > 0)) {
            throw new OutOfRange("These eggs have lost nothing yet. Weigh again later");
        }
        return new Conductance(MILLIGRAMS * grams() / Spell.exposureKilopascalDays(past, diffusion));
    }

    /** Of the mass before, 0 to 100. */
    public double pct() {
        return 100 * grams() / before.grams();
    }
}
