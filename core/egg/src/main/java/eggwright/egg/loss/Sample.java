package eggwright.egg.loss;

import eggwright.units.Mass;
import eggwright.units.OutOfRange;

/**
 * Eggs that are weighed again and again, with what those that are still among them weighed at set. Clears that are taken
 * out take their set mass with them; clears that stay, as in a sample of marked eggs, change nothing: they lose
 * about as much water as live eggs (common practice, no source).
 *
 * @param setMass of the eggs still in, tray taken off
 * @param eggs still in, at least 1
 */
public record Sample(Mass setMass, int eggs) {
    public Sample {
        if (eggs < 1) {
            throw new OutOfRange("A sample of " + eggs + " eggs cannot be weighed");
        }
    }

    /** Takes the tray off what the scale showed. */
    public static Sample ofTray(Mass withTray, Mass tray, int eggs) {
        return new Sample(withoutTray(withTray, tray), eggs);
    }

    /**
     * What the scale showed, less the tray.
     *
     * @throws OutOfRange if the tray weighs more than both together
     */
    public static Mass withoutTray(Mass withTray, Mass tray) {
        double grams = withTray.grams() - tray.grams();
        if (!(grams > 0)) {
            throw new OutOfRange("The tray, " + tray + ", weighs as much as tray and eggs together, " + withTray
                    + ". Look whether the two are swapped");
        }
        return Mass.ofGrams(grams);
    }

    /** After eggs of unknown mass were taken out: each takes the mean set mass. */
    public Sample without(int taken) {
        return without(taken, Mass.ofGrams(setMass.grams() * taken / eggs));
    }

    /** After eggs of known set mass were taken out. */
    public Sample without(int taken, Mass theirSetMass) {
        return new Sample(Mass.ofGrams(setMass.grams() - theirSetMass.grams()), eggs - taken);
    }

    /** What the eggs still in have lost. */
    public WaterLost lost(Mass now) {
        return new WaterLost(setMass, now);
    }
}
