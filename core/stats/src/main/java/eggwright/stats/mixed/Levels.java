package eggwright.stats.mixed;

import java.util.ArrayList;
import java.util.List;

/** Reads the effects of all levels off the modes. */
final class Levels {
    private Levels() {}

    /** At the point where the objective last looked. */
    static List<GroupEffects> of(Problem problem, Laplace laplace, List<Grouping> random, double[] deviations) {
        var cells = problem.cells();
        var modes = laplace.modes;
        var effects = new ArrayList<double[]>();
        var errors = new ArrayList<double[]>();
        for (var grouping : random) {
            effects.add(new double[grouping.levels().size()]);
            errors.add(new double[grouping.levels().size()]);
        }
        for (int k = 0; k < cells.width(); k++) {
            int g = cells.groupings[k];
            for (int node = cells.firstNode[k]; node < cells.firstNode[k + 1]; node++) {
                int level = node - cells.firstNode[k];
                effects.get(g)[level] = deviations[g] * modes.effects[node];
                errors.get(g)[level] =
                        Math.abs(deviations[g]) * Math.sqrt(modes.factor.inverseAt(cells.pattern.place(node, node)));
            }
        }
        if (cells.rowGrouping != Cells.NONE) {
            int g = cells.rowGrouping;
            int[] levelOfRow = random.get(g).levelOfRow();
            double s = deviations[g];
            for (int cell = 0; cell < cells.cellCount(); cell++) {
                for (int i = cells.start[cell]; i < cells.start[cell + 1]; i++) {
                    int level = levelOfRow[cells.order[i]];
                    double diagonal = 1 + s * s * modes.weight[i];
                    double lent = s * modes.weight[i] / diagonal;
                    effects.get(g)[level] = s * modes.rowEffects[i];
                    errors.get(g)[level] = Math.abs(s) * Math.sqrt(1 / diagonal + lent * lent * laplace.spreadOf(cell));
                }
            }
        }
        var all = new ArrayList<GroupEffects>();
        for (int g = 0; g < random.size(); g++) {
            all.add(new GroupEffects(random.get(g), Math.abs(deviations[g]), effects.get(g), errors.get(g)));
        }
        return all;
    }
}
