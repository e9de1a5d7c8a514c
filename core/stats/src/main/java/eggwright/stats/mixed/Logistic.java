package eggwright.stats.mixed;

import eggwright.stats.search.Curvature;
import eggwright.stats.search.QuasiNewton;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Ordinary logistic regression, which starts the search and tells whether the fixed terms part successes from failures:
 * where they do, its steps do not shrink but go on in the parting direction, which is taken for one where no row speaks
 * against it by more than 1 % of the longest row's move.
 *
 * <p>Source: Albert and Anderson 1984, Biometrika 71:1 (from memory). A parting direction raises the likelihood whatever
 * the groups' effects are, so that what is true here is true of the mixed model.
 */
final class Logistic {
    private static final int MOST_STEPS = 40;
    private static final double STILL = 1e-3;
    private static final double PARTING = 0.1;
    private static final double SLACK = 1e-2;

    private final Problem problem;
    final double[] coefficients;
    private double[] lastStep;
    private boolean still;

    Logistic(Problem problem) {
        this.problem = problem;
        coefficients = new double[problem.design().columns()];
        lastStep = new double[coefficients.length];
        startPooled();
        for (int i = 0; i < MOST_STEPS && !still; i++) {
            if (!step()) {
                break;
            }
        }
        if (!still && parting().isEmpty()) {
            // Newton's steps can also overshoot for ever; the search that follows has a rule against it.
            startPooled();
        }
    }

    private void startPooled() {
        double yes = Arrays.stream(problem.successes()).sum();
        double all = Arrays.stream(problem.trials()).sum();
        Arrays.fill(coefficients, 0);
        coefficients[0] = Math.log(yes / (all - yes));
    }

    private boolean step() {
        int rows = problem.rows();
        int columns = coefficients.length;
        double[] linear = new double[rows];
        problem.design().times(coefficients, linear);
        double[][] squares = new double[columns][columns];
        double[] residual = new double[rows];
        for (int i = 0; i < rows; i++) {
            double small = Math.exp(-Math.abs(linear[i]));
            double over = 1 / (1 + small);
            residual[i] = problem.successes()[i] - problem.trials()[i] * (linear[i] >= 0 ? over : small * over);
            problem.design().addSquare(i, problem.trials()[i] * small * over * over, squares);
        }
        double[] slope = new double[columns];
        problem.design().transposed(residual, slope);
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < i; j++) {
                squares[j][i] = squares[i][j];
            }
        }
        var inverse = Curvature.inverse(squares);
        if (inverse.isEmpty()) {
            return false;
        }
        double[] step = QuasiNewton.times(inverse.get(), slope);
        problem.design().times(step, linear);
        double longest = 0;
        for (int i = 0; i < rows; i++) {
            longest = problem.trials()[i] > 0 ? Math.max(longest, Math.abs(linear[i])) : longest;
        }
        double share = longest > 4 ? 4 / longest : 1;
        for (int i = 0; i < columns; i++) {
            coefficients[i] += share * step[i];
        }
        lastStep = step;
        still = longest < STILL;
        return true;
    }

    /** The terms whose coefficients run away; none where the fixed terms do not part the rows. */
    List<String> parting() {
        if (still) {
            return List.of();
        }
        double[] along = new double[problem.rows()];
        problem.design().times(lastStep, along);
        double longest = Arrays.stream(along).map(Math::abs).max().orElse(0);
        if (!(longest > PARTING)) {
            return List.of();
        }
        for (int i = 0; i < along.length; i++) {
            double y = problem.successes()[i];
            double n = problem.trials()[i];
            if (n > 0 && ((y < n && along[i] > SLACK * longest) || (y > 0 && along[i] < -SLACK * longest))) {
                return List.of();
            }
        }
        var terms = new ArrayList<String>();
        for (int i = 1; i < lastStep.length; i++) {
            if (Math.abs(lastStep[i]) > SLACK * longest) {
                terms.add(problem.design().names().get(i));
            }
        }
        return terms;
    }
}
