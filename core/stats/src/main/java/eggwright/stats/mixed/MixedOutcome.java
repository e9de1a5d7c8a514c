package eggwright.stats.mixed;

import java.util.List;

/** What became of fitting a mixed model. */
public sealed interface MixedOutcome {
    /**
     * It has a likeliest point.
     *
     * @param fixed coefficients on the logit, the intercept first
     * @param random in the order of the model's groupings
     * @param logLikelihood at its greatest, with binomial coefficients
     * @param rows that entered
     * @param iterations steps of the outer search
     * @param converged whether the slope vanished and the surface is a hill there
     * @param singular whether some grouping's deviation is 0: it scatters by no more than luck
     * @param empty terms left out, since no row that counts anything is of both kinds, or the others say them already
     */
    record Fitted(
            List<FixedEffect> fixed,
            List<GroupEffects> random,
            double logLikelihood,
            int rows,
            int iterations,
            boolean converged,
            boolean singular,
            List<String> empty)
            implements MixedOutcome {
        public Fitted {
            fixed = List.copyOf(fixed);
            random = List.copyOf(random);
            empty = List.copyOf(empty);
        }
    }

    /**
     * All rows together counted none, or all: there is no finite logit.
     *
     * @param all whether all did
     */
    record NoneOrAll(boolean all) implements MixedOutcome {}

    /**
     * Some fixed terms part the rows in which all did from those in which none did, so that the likelihood rises for ever
     * as their coefficients grow.
     *
     * @param terms whose coefficients run away
     */
    record Separated(List<String> terms) implements MixedOutcome {
        public Separated {
            terms = List.copyOf(terms);
        }
    }

    /**
     * The likelihood rises for ever as a grouping's deviation grows: within its groups all did or none.
     *
     * @param grouping its name
     */
    record Unbounded(String grouping) implements MixedOutcome {}
}
