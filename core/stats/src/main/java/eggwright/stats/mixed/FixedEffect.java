package eggwright.stats.mixed;

import org.hipparchus.special.Erf;

/**
 * A fixed coefficient.
 *
 * @param term its name
 * @param estimate on the logit
 * @param standardError from the curvature of the whole deviance, deviations included; not a number where that is no hill
 */
public record FixedEffect(String term, double estimate, double standardError) {
    /** Estimate over standard error (Wald). */
    public double z() {
        return estimate / standardError;
    }

    /** Chance, 0 to 1, of an estimate at least as far from 0 by luck, by the normal. */
    public double chance() {
        return Erf.erfc(Math.abs(z()) / Math.sqrt(2));
    }
}
