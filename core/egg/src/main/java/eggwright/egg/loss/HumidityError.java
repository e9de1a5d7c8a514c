package eggwright.egg.loss;

import eggwright.egg.air.Saturation;
import eggwright.egg.shell.Diffusion;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import java.util.List;

/**
 * How sure a needed humidity is: first-order propagation of independent errors, section 4.4 of
 * {@code docs/models/weight-loss.md}. All are standard errors.
 *
 * @param massGrams of each of the two mean masses
 * @param readingPct of the humidity that was read so far, at random; in points
 * @param settingPct of the humidity that the machine will hold, in points
 * @param weighedAtDays of the time of the second weighing
 * @param shells whom the weighed eggs stand for
 */
public record HumidityError(
        double massGrams, double readingPct, double settingPct, double weighedAtDays, ShellSample shells) {
    private static final double PERCENT = 100;

    /**
     * Standard error of the needed humidity, in points.
     *
     * @param set mass at the first weighing, which is also the base of the loss
     * @param now mass at the second
     * @param wantedPct final loss wanted
     * @param past the spells between the two
     * @throws OutOfRange if nothing is lost yet, or as much as is wanted
     */
    public double points(Mass set, Mass now, double wantedPct, List<Spell> past, Ahead ahead, Diffusion diffusion) {
        double wanted = wantedPct / PERCENT;
        double soFar = set.grams() - now.grams();
        double toGo = now.grams() - set.grams() * (1 - wanted);
        if (!(soFar > 0 && toGo > 0)) {
            throw new OutOfRange(
                    "Between nothing lost and all of " + wantedPct + " % lost there is a needed humidity to be"
                            + " unsure of; from " + set + " to " + now + " there is none");
        }
        double pastDays = past.stream().mapToDouble(Spell::days).sum();

        double perSetGram = (1 - wanted) / toGo + 1 / soFar;
        double perNowGram = 1 / toGo + 1 / soFar;
        double perDay = 1 / pastDays + 1 / ahead.days();
        double log = squared(massGrams * perSetGram)
                + squared(massGrams * perNowGram)
                + squared(weighedAtDays * perDay)
                + squared(shells.variation());

        // Both errors move the difference that all of the loss to come needs, be its air settled or not; where nothing
        // is settled and the egg is as warm as the air this is 1 - RH2 of (4.4).
        double difference = toGo * Spell.exposureKilopascalDays(past, diffusion) / soFar / ahead.weightDays(diffusion);
        double dryness = PERCENT * difference / ahead.airKilopascals();
        double reading = readingPct * readingFactor(difference, past, ahead, diffusion);
        return Math.sqrt(squared(dryness) * log + squared(reading) + squared(settingPct));
    }

    /** Points of needed humidity for each point that the past was misread by: R of (4.4) in the plain case. */
    private static double readingFactor(double difference, List<Spell> past, Ahead ahead, Diffusion diffusion) {
        double saturated = past.stream()
                .mapToDouble(spell -> diffusion.factor(spell.conditions())
                        * Saturation.over(spell.air().temperature()).kilopascals()
                        * spell.days())
                .sum();
        return difference / ahead.airKilopascals() * saturated / Spell.exposureKilopascalDays(past, diffusion);
    }

    private static double squared(double number) {
        return number * number;
    }
}
