package eggwright.stats.overdispersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import eggwright.stats.ReferenceTable;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** R 4.2.2 optim on the written-out likelihood, confirmed there by VGAM and glmmTMB to 1e-6. */
class BetaBinomialFitReferenceTest {
    /** R's search stops when the likelihood no longer rises: its estimates are good to about 1e-6. */
    private static final double AS_R = 1e-5;

    /** R's standard errors come from differences of the likelihood. */
    private static final double ERRORS_AS_R = 1e-4;

    private static final double LIKELIHOOD_AS_R = 1e-6;
    private static final List<ReferenceTable.Row> EXPECTED =
            ReferenceTable.read("overdispersion/betabin_fixed_expected.csv");
    private static final List<ReferenceTable.Row> FITS = ReferenceTable.read("overdispersion/betabin_fit_expected.csv");

    @Test
    void fit_agreesWithR_forCrowdersSeeds() {
        var groups = ReferenceTable.read("overdispersion/glmm_seeds.csv").stream()
                .map(r -> new Rate(r.count("r"), r.count("n")))
                .toList();
        var fit = assertInstanceOf(BetaBinomialFit.Scattered.class, BetaBinomialFit.of(groups));
        assertEquals(estimate("BB03", "(Intercept)"), fit.logitMean(), AS_R);
        assertEquals(error("BB03", "(Intercept)"), fit.logitMeanError(), ERRORS_AS_R * fit.logitMeanError());
        assertEquals(estimate("BB03", "logit_rho:(common)"), fit.logitRho(), AS_R);
        assertEquals(error("BB03", "logit_rho:(common)"), fit.logitRhoError(), ERRORS_AS_R * fit.logitRhoError());
        assertEquals(estimate("BB03", "rho:(common)"), fit.rho(), AS_R);
        assertEquals(likelihood("BB03"), fit.logLikelihood(), LIKELIHOOD_AS_R);
    }

    @Test
    void fit_agreesWithR_forWeilsRatsEachGroupWithItsOwnScatter() {
        var control = assertInstanceOf(BetaBinomialFit.Scattered.class, BetaBinomialFit.of(of("rats", "CTRL")));
        var treated = assertInstanceOf(BetaBinomialFit.Scattered.class, BetaBinomialFit.of(of("rats", "TREAT")));
        assertEquals(estimate("BB04", "(Intercept)"), control.logitMean(), AS_R);
        assertEquals(error("BB04", "(Intercept)"), control.logitMeanError(), ERRORS_AS_R);
        assertEquals(estimate("BB04", "(Intercept)") + estimate("BB04", "groupTREAT"), treated.logitMean(), AS_R);
        // The control rats' likelihood is nearly flat in rho (standard error 2.5): R stops earlier along it.
        assertEquals(estimate("BB04", "rho:groupCTRL"), control.rho(), AS_R);
        assertEquals(estimate("BB04", "rho:groupTREAT"), treated.rho(), AS_R);
        assertEquals(
                error("BB04", "logit_rho:groupTREAT"), treated.logitRhoError(), ERRORS_AS_R * treated.logitRhoError());
        assertEquals(likelihood("BB04"), control.logLikelihood() + treated.logLikelihood(), LIKELIHOOD_AS_R);
    }

    @Test
    void fit_findsNoScatter_forTheTreatedGoats() {
        var control = assertInstanceOf(BetaBinomialFit.Scattered.class, BetaBinomialFit.of(of("dja", "CTRL")));
        var treated = assertInstanceOf(BetaBinomialFit.NoMoreThanLuck.class, BetaBinomialFit.of(of("dja", "TREAT")));
        assertEquals(estimate("BB09", "rho:groupCTRL"), control.rho(), AS_R);
        assertEquals(estimate("BB09", "(Intercept)") + estimate("BB09", "groupTREAT"), treated.logitMean(), 1e-4);
        assertEquals(likelihood("BB09"), control.logLikelihood() + treated.logLikelihood(), LIKELIHOOD_AS_R);
    }

    @Test
    void fit_saysSo_whenNoneOrAllDidOrNothingScatters() {
        assertEquals(new BetaBinomialFit.NoneOrAll(1), BetaBinomialFit.of(List.of(new Rate(5, 5), new Rate(54, 54))));
        assertEquals(new BetaBinomialFit.NoneOrAll(0), BetaBinomialFit.of(List.of(new Rate(0, 1))));
        assertInstanceOf(
                BetaBinomialFit.NoMoreThanLuck.class, BetaBinomialFit.of(Collections.nCopies(20, new Rate(45, 54))));
        // Single eggs cannot tell scatter from luck.
        assertInstanceOf(
                BetaBinomialFit.NoMoreThanLuck.class,
                BetaBinomialFit.of(List.of(new Rate(1, 1), new Rate(0, 1), new Rate(1, 1))));
        assertThrows(OutOfRange.class, () -> BetaBinomialFit.of(List.of(new Rate(0, 0))));
    }

    @Test
    void fit_isSame_forEmptyGroupsAndManyEggs() {
        var some = List.of(new Rate(40_000, 50_000), new Rate(46_000, 50_000), new Rate(900, 1000));
        var more = List.of(some.get(0), new Rate(0, 0), some.get(1), some.get(2));
        var fit = assertInstanceOf(BetaBinomialFit.Scattered.class, BetaBinomialFit.of(some));
        assertEquals(fit, BetaBinomialFit.of(more));
        assertEquals(0.87, fit.mean(), 0.03);
    }

    private static List<Rate> of(String animals, String group) {
        return ReferenceTable.read("overdispersion/betabin_" + animals + ".csv").stream()
                .filter(r -> r.text("group").equals(group))
                .map(r -> new Rate(r.count("y"), r.count("n")))
                .toList();
    }

    private static double estimate(String id, String parameter) {
        return row(id, parameter).number("estimate");
    }

    private static double error(String id, String parameter) {
        return row(id, parameter).number("se");
    }

    private static ReferenceTable.Row row(String id, String parameter) {
        return EXPECTED.stream()
                .filter(r -> r.text("case_id").equals(id) && r.text("parameter").equals(parameter))
                .findFirst()
                .orElseThrow();
    }

    private static double likelihood(String id) {
        return ReferenceTable.answer(FITS, id, "logLik").number("value");
    }
}
