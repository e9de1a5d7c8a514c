package eggwright.forecast.level;

import eggwright.trade.Species;
import java.util.Map;

/** What may be true of one stage on one farm, so many times over, each as likely as another. */
public final class StageDraws {
    private final Field field;
    private final int first;
    private final Draw[] draws;

    /** @param first set that the draws hold */
    StageDraws(Field field, int first, Draw[] draws) {
        this.field = field;
        this.first = first;
        this.draws = draws;
    }

    /**
     * @param path from the first set held
     * @param trays likeness of the eggs of a tray in each loss
     */
    record Draw(Pass.Path path, double trays) {}

    /**
     * Some eggs of a set.
     *
     * @param set its place in the order of time
     * @param expectedLogit share expected to come through where the farm does as published ones
     * @param shares of the eggs from each pen; pens that the farm does not have add nothing
     */
    public Eggs eggs(int set, Species species, double expectedLogit, Map<Pen, Double> shares) {
        return new Eggs(set - first, field.kinds.indexOf(species), expectedLogit, shares);
    }

    /** How some eggs may do at this stage. */
    public final class Eggs {
        private final int set;
        private final int species;
        private final Beforehand beforehand;
        private final double expected;
        private final int[] pens;
        private final double[] shares;

        private Eggs(int set, int species, double expectedLogit, Map<Pen, Double> shares) {
            this.set = set;
            this.species = species;
            this.beforehand = field.beforehand.get(species);
            this.expected = beforehand.scale().place(expectedLogit);
            var known = field.pens.stream().filter(shares::containsKey).toList();
            this.pens = known.stream().mapToInt(field.pens::indexOf).toArray();
            this.shares = known.stream()
                    .mapToDouble(pen -> shares.getOrDefault(pen, 0.0))
                    .toArray();
        }

        /** The share that comes through, in logits. */
        public double logit(int draw) {
            return beforehand.scale().logit(expected + offset(draw));
        }

        /** Their offset from what is expected, on the scale of luck. */
        double offset(int draw) {
            var path = draws[draw].path;
            double sum = path.lies()[set][species];
            for (int i = 0; i < pens.length; i++) {
                sum += shares[i] * path.pens()[pens[i]];
            }
            return sum;
        }

        /** Likeness of the eggs of one tray, 0 to 1. */
        public double trayRho(int draw) {
            return draws[draw].trays * beforehand.likeness();
        }
    }
}
