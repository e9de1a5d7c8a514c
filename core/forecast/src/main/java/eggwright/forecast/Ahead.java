package eggwright.forecast;

import eggwright.forecast.level.Counts;
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

    /** @param trays over which the eggs are spread */
    record Group(int eggs, int trays, List<Step> steps) {
        Group {
            steps = List.copyOf(steps);
        }
    }

    /**
     * @param logit the share expected to come through where the farm does as published ones
     * @param may how these eggs may do on this farm
     */
    record Step(double logit, StageDraws.Eggs may) {}

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
                double logit = step.logit + step.may.offset(future);
                eggs = Counts.through(eggs, logit, step.may.trayRho(future), group.trays, random);
            }
            sum += eggs;
        }
        return sum;
    }
}
