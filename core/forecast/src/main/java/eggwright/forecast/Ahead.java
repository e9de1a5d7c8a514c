package eggwright.forecast;

import eggwright.forecast.chance.Counts;
import eggwright.forecast.level.StageDraws;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What the waiting eggs of one species of one set still have to come through.
 *
 * @param groups eggs that have come equally far
 */
record Ahead(List<Group> groups) {
    Ahead {
        groups = List.copyOf(groups);
    }

    /**
     * @param trays over which the eggs are spread
     * @param steps how they may do at each stage that is before them
     */
    record Group(int eggs, int trays, List<StageDraws.Eggs> steps) {
        Group {
            steps = List.copyOf(steps);
        }
    }

    /**
     * Saleable chicks in one future.
     *
     * @param future which
     * @param grown how many times the eggs that wait; above 1 where some have hatched
     */
    int chicks(int future, double grown, RandomGenerator random) {
        int sum = 0;
        for (var group : groups) {
            int eggs = (int) Math.round(group.eggs * grown);
            for (var step : group.steps) {
                eggs = Counts.through(eggs, step.logit(future), step.trayRho(future), group.trays, random);
            }
            sum += eggs;
        }
        return sum;
    }
}
