package eggwright.forecast;

import eggwright.forecast.history.StageKind;
import eggwright.forecast.level.Counts;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What the waiting eggs of one species of one set still have to come through.
 *
 * @param set which of the sets that a future holds
 * @param groups eggs that have come equally far
 */
record Ahead(int set, List<Group> groups) {
    Ahead {
        groups = List.copyOf(groups);
    }

    /** @param trays over which the eggs are spread */
    record Group(int eggs, int trays, List<Step> steps) {
        Group {
            steps = List.copyOf(steps);
        }
    }

    /** @param logit the share expected to come through where the farm does as published ones, its pens taken in */
    record Step(StageKind kind, double logit) {}

    /**
     * Saleable chicks in one future.
     *
     * @param grown how many times the eggs that wait; above 1 where some have hatched
     */
    int chicks(Chain.Future future, double grown, RandomGenerator random) {
        int sum = 0;
        for (var group : groups) {
            int eggs = (int) Math.round(group.eggs * grown);
            for (var step : group.steps) {
                var draw = future.draws().get(step.kind);
                if (draw == null) {
                    throw new IllegalStateException("Stage " + step.kind + " was not drawn");
                }
                eggs = Counts.through(eggs, step.logit + draw.offset(set), draw.trayRho(), group.trays, random);
            }
            sum += eggs;
        }
        return sum;
    }
}
