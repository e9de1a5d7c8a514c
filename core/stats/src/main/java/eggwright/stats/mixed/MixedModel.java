package eggwright.stats.mixed;

import eggwright.units.OutOfRange;
import java.util.List;

/**
 * A binomial mixed model: the logit of a row's chance is a sum of fixed terms and of effects of the groups that the row is
 * of, which scatter normally about 0. Groupings may cross or nest, any number of them; one may give each row its own
 * level, which is the scatter between trays that is nobody's fault.
 *
 * <p>Fitted by maximum likelihood under Laplace's approximation, or by adaptive Gauss-Hermite quadrature where there is
 * one grouping. Error: estimates, standard errors and deviations within 1e-4 of themselves of R's lme4 over 21 published
 * and simulated fits, but for one standard error (GM05), 2.5e-4 from lme4's and 5e-6 from glmmTMB's exact one, as {@code
 * MixedModelReferenceTest} checks; docs/models/mixed-model.md has the table.
 *
 * <p>Source: Breslow and Clayton 1993, J. Am. Stat. Assoc. 88:9; Pinheiro and Chao 2006, J. Comput. Graph. Stat. 15:58
 * (both from memory).
 *
 * @param fixed what each row's chance may hang on; an interaction's two terms stand before it
 * @param random where groups scatter; none makes it an ordinary logistic regression
 */
public record MixedModel(BinomialCounts counts, List<Term> fixed, List<Grouping> random) {
    /** The name of the coefficient that every row has. */
    public static final String INTERCEPT = "intercept";

    private static final int MOST_NODES = 100;

    public MixedModel {
        fixed = List.copyOf(fixed);
        random = List.copyOf(random);
        for (int g = 0; g < random.size(); g++) {
            if (random.get(g).levelOfRow().length != counts.rows()) {
                throw new OutOfRange(random.get(g).name() + " has "
                        + random.get(g).levelOfRow().length + " rows where the counts have " + counts.rows());
            }
            for (int other = 0; other < g; other++) {
                if (random.get(g).partsAsDoes(random.get(other))) {
                    throw new OutOfRange("\"" + random.get(g).name() + "\" and \""
                            + random.get(other).name()
                            + "\" part the rows alike, so that their scatter cannot be told apart. Leave one of them "
                            + "out");
                }
            }
        }
    }

    /**
     * Fits by Laplace's approximation.
     *
     * @throws OutOfRange if a term can be had from others; the sentence names both
     */
    public MixedOutcome fit() {
        return new Fitter(this, 1).outcome();
    }

    /**
     * Fits by adaptive quadrature.
     *
     * @param nodes 1 to 100; 1 is Laplace's approximation
     * @throws OutOfRange as above, or if there are several nodes and not exactly one grouping
     */
    public MixedOutcome fit(int nodes) {
        checkNodes(nodes);
        return new Fitter(this, nodes).outcome();
    }

    /**
     * Fits, and gives each grouping's standard deviation an interval from the profile of the deviance.
     *
     * @param level share of such intervals that hold the truth, 0.5 to 0.999
     * @return the fit with intervals, or why there is none
     */
    public ProfiledOutcome profiled(int nodes, double level) {
        checkNodes(nodes);
        OutOfRange.check("An interval's level of", level, 0.5, 0.999, "");
        return new Fitter(this, nodes).profiled(level);
    }

    private void checkNodes(int nodes) {
        if (!(nodes >= 1 && nodes <= MOST_NODES)) {
            throw new OutOfRange(nodes + " quadrature nodes are outside 1 to " + MOST_NODES);
        }
        if (nodes > 1 && random.size() != 1) {
            throw new OutOfRange("Quadrature with " + nodes + " nodes needs exactly one grouping, and there are "
                    + random.size() + ". Leave quadrature out, or name one grouping");
        }
    }
}
