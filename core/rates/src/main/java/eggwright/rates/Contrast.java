package eggwright.rates;

import eggwright.units.Rate;

/** One group against the rest of the farm. */
public sealed interface Contrast {
    String key();

    Rate group();

    /** All eggs that are certainly not of this group. */
    Rate rest();

    Verdict verdict();

    /** Too few eggs, or too few trays to know how much trays scatter. */
    record TooFew(String key, Rate group, Rate rest) implements Contrast {
        @Override
        public Verdict verdict() {
            return Verdict.TOO_FEW;
        }
    }

    /**
     * A difference, and how often luck and the usual tray-to-tray scatter would make one as large.
     *
     * @param chance 0 to 1, for this group on its own
     * @param adjustedChance the same, given how many groups were looked at (Holm); never less than {@code chance}
     */
    record Compared(String key, Rate group, Rate rest, double chance, double adjustedChance) implements Contrast {
        /** Below this an adjusted chance is hardly luck: 1 in 20, the trade's and everybody's custom. */
        public static final double HARDLY = 0.05;

        /** In share points, -1 to 1: above 0 where the group is better. */
        public double difference() {
            return group.share() - rest.share();
        }

        @Override
        public Verdict verdict() {
            return adjustedChance < HARDLY ? Verdict.HARDLY_LUCK : Verdict.COULD_BE_LUCK;
        }
    }
}
