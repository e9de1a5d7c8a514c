package eggwright.stats.mixed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.stats.search.Objective;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The slopes that the search goes by, against differences of the values themselves. */
class SlopeTest {
    private static final double STEP = 1e-4;

    /** Central differences of this step are right to its square times the third derivative. */
    private static final double AS_DIFFERENCES = 2e-5;

    static Stream<Map.Entry<String, MixedModel>> models() {
        return PublishedModels.all().entrySet().stream();
    }

    @ParameterizedTest
    @MethodSource("models")
    void laplace_slopesAsItsValuesDiffer(Map.Entry<String, MixedModel> published) {
        var problem = problem(published.getValue());
        assertSlope(
                new Laplace(problem),
                point(problem, published.getValue().random().size()));
    }

    @Test
    void quadrature_slopesAsItsValuesDiffer() {
        for (var model : List.of(PublishedModels.seedsWithInteraction(), PublishedModels.herds())) {
            for (int nodes : new int[] {1, 2, 3, 9}) {
                assertSlope(new Quadrature(problem(model), nodes), point(problem(model), 1));
            }
        }
    }

    @Test
    void quadrature_isLaplace_whenItHasOneNode() {
        var problem = problem(PublishedModels.herds());
        double[] point = point(problem, 1);
        double[] slope = new double[point.length];
        double[] other = new double[point.length];
        assertEquals(new Laplace(problem).at(point, slope), new Quadrature(problem, 1).at(point, other), 1e-10);
        for (int i = 0; i < slope.length; i++) {
            assertEquals(slope[i], other[i], 1e-7);
        }
    }

    private static Problem problem(MixedModel model) {
        return Problem.of(model, DesignBuilder.of(model.counts().trials(), model.fixed()));
    }

    /** Somewhere on the slope, one deviation of 0 and one below. */
    private static double[] point(Problem problem, int groupings) {
        double[] point = new double[problem.design().columns() + groupings];
        for (int i = 0; i < point.length; i++) {
            point[i] = i < problem.design().columns()
                    ? 0.3 - 0.1 * i
                    : 0.6 - 0.4 * (i - problem.design().columns());
        }
        return point;
    }

    private static void assertSlope(Objective objective, double[] point) {
        double[] slope = new double[point.length];
        double[] unused = new double[point.length];
        objective.at(point, slope);
        for (int i = 0; i < point.length; i++) {
            double[] there = point.clone();
            there[i] += STEP;
            double up = objective.at(there, unused);
            there[i] -= 2 * STEP;
            double down = objective.at(there, unused);
            assertEquals((up - down) / (2 * STEP), slope[i], AS_DIFFERENCES * Math.max(1, Math.abs(slope[i])));
        }
    }
}
