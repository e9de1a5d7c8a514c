package eggwright.forecast.level;

import eggwright.forecast.chance.Grid;
import java.util.List;

/**
 * What was counted of eggs of one species in one set that came of the same pens: how likely for each offset, and the normal
 * that stands for it near where it lies.
 */
final class Cell {
    /** So many steps of the grid to both sides the bend of the likelihood is measured. */
    private static final int NEAR = 2;

    /** The bend that is believed, at least and at most, as a share of the bend expected on average. */
    private static final double LEAST = 0.3;

    private static final double MOST = 3;

    final int species;
    /** Places among the farm's pens, and the share of the eggs from each. */
    final int[] pens;

    final double[] shares;
    private final Likelihood likelihood;

    private final double[][] logs;

    /** @param beforehand of its species */
    Cell(int species, Beforehand beforehand, int[] pens, double[] shares, List<Observed.Count> counts) {
        this.species = species;
        this.pens = pens;
        this.shares = shares;
        this.likelihood = new Likelihood(
                beforehand.scale(),
                counts,
                Scatter.trays().stream()
                        .mapToDouble(guess -> beforehand.likeness() * guess.value())
                        .toArray());
        this.logs = likelihood.logs();
    }

    /** What its pens add, in logits. */
    double ofPens(double[] offsets) {
        double sum = 0;
        for (int i = 0; i < pens.length; i++) {
            sum += shares[i] * offsets[pens[i]];
        }
        return sum;
    }

    /** The normal that stands for the counts: {@code log + pull x - precision x² / 2}. */
    record Normal(double precision, double pull, double log) {}

    /** How sharply the normal bends. */
    enum Bend {
        /** At least as on average: steps from far away do not reach too far. */
        CAREFUL,
        AS_IT_IS
    }

    /** @param offset near which it must be right */
    Normal normalAt(double offset, int tray, Bend how) {
        double at = Grid.inside(offset, NEAR);
        double bell = NEAR * Grid.STEP;
        double here = Grid.between(logs[tray], at);
        double up = Grid.between(logs[tray], at + bell);
        double down = Grid.between(logs[tray], at - bell);
        double slope = (up - down) / (2 * bell);
        double expected = likelihood.information(tray, at);
        double bend = Math.clamp(
                (2 * here - up - down) / (bell * bell), (how == Bend.CAREFUL ? 1 : LEAST) * expected, MOST * expected);
        double pull = slope + bend * at;
        double log = here - pull * at + bend * at * at / 2;
        return new Normal(bend, pull, log);
    }

    /** What the counts say beyond the normal, by grid point. */
    double[] beyond(Normal normal, int tray) {
        var rest = new double[Grid.POINTS];
        for (int i = 0; i < Grid.POINTS; i++) {
            double x = Grid.at(i);
            rest[i] = logs[tray][i] - normal.log - normal.pull * x + normal.precision * x * x / 2;
        }
        return rest;
    }
}
