package eggwright.stats.mixed;

import java.util.List;

/** Something fixed that a row's chance may hang on. */
public sealed interface Term {
    /** As it is answered. */
    String name();

    /**
     * A number by row, with a straight line on the logit.
     *
     * @param values finite, by row
     */
    record Numbers(String name, double[] values) implements Term {
        public Numbers {
            values = values.clone();
        }
    }

    /**
     * One of several kinds by row, each against the first.
     *
     * @param levelOfRow the place in {@code levels}
     */
    record Category(String name, int[] levelOfRow, List<String> levels) implements Term {
        public Category {
            levelOfRow = levelOfRow.clone();
            levels = List.copyOf(levels);
        }
    }

    /**
     * How far the effect of one hangs on the other: the products of their columns. Both stand in the model by themselves
     * too.
     */
    record Interaction(Term one, Term other) implements Term {
        @Override
        public String name() {
            return one.name() + " by " + other.name();
        }
    }
}
