package eggwright.stats.agreement;

import eggwright.units.OutOfRange;
import java.util.List;

/**
 * How many of the same eggs each of two looks called what, where nobody knows which egg was which. A table cannot be
 * had from these totals, but they bound it.
 *
 * <p>The most that can have agreed is the sum of the lesser totals; with it kappa is the largest that these totals
 * allow (Cohen 1960, Educ. Psychol. Meas. 20:37). The least is what one category needs when its two totals name more
 * eggs than there are, first + second - eggs, or else 0: two categories cannot both be so full, and where none is, every
 * egg can have been called two things. Both ends can be reached, so the bounds cannot be narrowed. The proof is ours, by
 * the theorem on flows through a table with given totals (from memory).
 *
 * @param categories the words, each once
 * @param first eggs that the first look called each
 * @param second eggs that the second look called each; the same sum
 */
public record AgreementMargins(List<String> categories, List<Long> first, List<Long> second) {
    /**
     * Copies the lists.
     *
     * @throws OutOfRange if the totals do not speak of the same number of eggs, 1 to 10 million, or name a count below 0
     */
    public AgreementMargins {
        categories = List.copyOf(categories);
        first = List.copyOf(first);
        second = List.copyOf(second);
        if (first.size() != categories.size() || second.size() != categories.size()) {
            throw new OutOfRange(
                    "Each of the two looks has to give a total for each of " + categories.size() + " categories");
        }
        if (first.stream().anyMatch(n -> n < 0) || second.stream().anyMatch(n -> n < 0)) {
            throw new OutOfRange("A total of a look is outside 0 or more");
        }
        if (sum(first) != sum(second) || sum(first) == 0 || sum(first) > AgreementTable.MOST_EGGS) {
            throw new OutOfRange("Looks at " + sum(first) + " and at " + sum(second)
                    + " eggs cannot be compared: both have to be at the same eggs, 1 to " + AgreementTable.MOST_EGGS);
        }
    }

    private static long sum(List<Long> totals) {
        return totals.stream().mapToLong(Long::longValue).sum();
    }

    /** Eggs looked at twice. */
    public long eggs() {
        return sum(first);
    }

    /** The fewest eggs that both looks can have called the same. */
    public long leastAgreed() {
        long least = 0;
        for (int i = 0; i < categories.size(); i++) {
            least = Math.max(least, first.get(i) + second.get(i) - eggs());
        }
        return least;
    }

    /** The most eggs that both looks can have called the same. */
    public long mostAgreed() {
        long most = 0;
        for (int i = 0; i < categories.size(); i++) {
            most += Math.min(first.get(i), second.get(i));
        }
        return most;
    }

    /** Eggs squared, times the share, 0 to 1, that would agree by luck alone with these totals. */
    long expectedTimesSquare() {
        long sum = 0;
        for (int i = 0; i < categories.size(); i++) {
            sum += first.get(i) * second.get(i);
        }
        return sum;
    }

    /** The share, 0 to 1, that would agree by luck alone with these totals. */
    public double expected() {
        return (double) expectedTimesSquare() / ((double) eggs() * eggs());
    }

    /** The least kappa that these totals allow; not a number where both looks called all eggs the same one thing. */
    public double leastKappa() {
        return kappa(leastAgreed());
    }

    /** The largest kappa that these totals allow; not a number where both looks called all eggs the same one thing. */
    public double mostKappa() {
        return kappa(mostAgreed());
    }

    /** Kappa with so many agreed: all in whole numbers up to the last division. */
    double kappa(long agreed) {
        long luck = expectedTimesSquare();
        long square = eggs() * eggs();
        return luck == square ? Double.NaN : (double) (eggs() * agreed - luck) / (square - luck);
    }
}
