package eggwright.stats.agreement;

import eggwright.units.OutOfRange;
import java.util.HashSet;
import java.util.List;

/**
 * What two looks called the same eggs, egg by egg: the first look's word is the row, the second's the column.
 *
 * <p>Range: at least one category, 1 to 10 million eggs in all, so that every product of totals is a whole number that
 * is kept exactly.
 *
 * @param categories the words, each once, the same for both looks
 * @param counts a row for each category, in their order, with a count for each category
 */
public record AgreementTable(List<String> categories, List<List<Long>> counts) {
    static final long MOST_EGGS = 10_000_000;

    /**
     * Copies the lists.
     *
     * @throws OutOfRange if the table is not square, names a category twice, or holds a count below 0, no egg or more
     *     than 10 million
     */
    public AgreementTable {
        categories = List.copyOf(categories);
        counts = counts.stream().map(List::copyOf).toList();
        if (new HashSet<>(categories).size() < categories.size()) {
            throw new OutOfRange("A table of agreement names a category twice: " + categories);
        }
        int wide = categories.size();
        if (counts.size() != wide || counts.stream().anyMatch(row -> row.size() != wide)) {
            throw new OutOfRange("A table of agreement of " + wide + " categories has to have " + wide + " rows of "
                    + wide + " counts");
        }
        long all = 0;
        for (var row : counts) {
            for (long count : row) {
                if (!(count >= 0 && count <= MOST_EGGS)) {
                    throw new OutOfRange(
                            "A count of " + count + " in a table of agreement is outside 0 to " + MOST_EGGS + " eggs");
                }
                all += count;
            }
        }
        if (!(all >= 1 && all <= MOST_EGGS)) {
            throw new OutOfRange(
                    all == 0
                            ? "A table of agreement of 0 eggs says nothing: no egg was looked at twice"
                            : "A table of agreement of " + all + " eggs is outside 1 to " + MOST_EGGS + " eggs");
        }
    }

    /** Eggs that the first look called {@code row} and the second {@code column}. */
    public long count(int row, int column) {
        return counts.get(row).get(column);
    }

    /** Eggs looked at twice. */
    public long eggs() {
        return counts.stream().flatMap(List::stream).mapToLong(Long::longValue).sum();
    }

    /** Eggs that both looks called the same. */
    public long agreed() {
        long sum = 0;
        for (int i = 0; i < categories.size(); i++) {
            sum += count(i, i);
        }
        return sum;
    }

    /** What each look called so many of, without which egg was which. */
    public AgreementMargins margins() {
        int wide = categories.size();
        long[] first = new long[wide];
        long[] second = new long[wide];
        for (int i = 0; i < wide; i++) {
            for (int j = 0; j < wide; j++) {
                first[i] += count(i, j);
                second[j] += count(i, j);
            }
        }
        return new AgreementMargins(
                categories,
                java.util.Arrays.stream(first).boxed().toList(),
                java.util.Arrays.stream(second).boxed().toList());
    }

    /**
     * Agreement on one category, whatever the others were called.
     *
     * @throws OutOfRange if there is no such category
     */
    public SpecificAgreement on(String category) {
        int at = categories.indexOf(category);
        if (at < 0) {
            throw new OutOfRange(
                    "There is no category \"" + category + "\". There are " + String.join(", ", categories));
        }
        var margins = margins();
        long both = count(at, at);
        return new SpecificAgreement(
                category, both, margins.first().get(at) + margins.second().get(at) - 2 * both);
    }

    /** Agreement on each category, in their order. */
    public List<SpecificAgreement> onEach() {
        return categories.stream().map(this::on).toList();
    }
}
