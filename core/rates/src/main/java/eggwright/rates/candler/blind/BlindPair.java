package eggwright.rates.candler.blind;

import eggwright.book.entry.Finding;
import eggwright.stats.agreement.AgreementMargins;
import eggwright.stats.agreement.AgreementTable;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;

/**
 * Two looks at one tray. That the second was blind the caller vouches for; what else keeps them from being compared is
 * found here.
 *
 * @param first the row of a table
 * @param second the column
 */
public record BlindPair(SeenAtLook first, SeenAtLook second) {
    /** The words of both looks, in the order of the findings; an egg wrong end up is live. */
    static final List<Finding> WORDS = Arrays.stream(Finding.values())
            .filter(f -> f != Finding.WRONG_END_UP)
            .toList();

    /** What the two looks can tell of agreement. */
    public sealed interface Told {
        /** It is known what each look called each egg. */
        record EggByEgg(AgreementTable table) implements Told {}

        /**
         * Only how many each look called what. A table cannot be had from that, so kappa cannot either; how many eggs
         * can have agreed is bounded.
         */
        record TotalsOnly(AgreementMargins totals) implements Told {}

        /** They cannot be compared. */
        record Nothing(WhyNot why) implements Told {}
    }

    /** What keeps two looks from being compared. */
    public enum WhyNot {
        SAME_PERSON,
        OTHER_TRAY,
        OTHER_DAY,
        /** One of them was not at all eggs of this one tray. */
        NOT_THIS_TRAY_ALONE,
        /** Eggs were taken out without a name for why. */
        UNSORTED,
        /** Eggs were taken out, moved or added between the looks: what one saw the other could not see. */
        OTHER_EGGS,
        /** One of them names more eggs or places than there were eggs. */
        MORE_SEEN_THAN_IN
    }

    /** What the looks tell. */
    public Told told() {
        if (first.who().equals(second.who())) {
            return new Told.Nothing(WhyNot.SAME_PERSON);
        }
        if (!first.load().equals(second.load())) {
            return new Told.Nothing(WhyNot.OTHER_TRAY);
        }
        if (!first.on().equals(second.on())) {
            return new Told.Nothing(WhyNot.OTHER_DAY);
        }
        for (var look : List.of(first, second)) {
            switch (look.of()) {
                case NOT_THIS_TRAY_ALONE -> {
                    return new Told.Nothing(WhyNot.NOT_THIS_TRAY_ALONE);
                }
                case UNSORTED -> {
                    return new Told.Nothing(WhyNot.UNSORTED);
                }
                case WHOLE_TRAY -> {
                    // May be compared.
                }
            }
        }
        if (first.eggs() != second.eggs() || first.eggs() == 0) {
            return new Told.Nothing(WhyNot.OTHER_EGGS);
        }
        if (first.seen(Finding.LIVE) < 0 || second.seen(Finding.LIVE) < 0 || marked().size() > first.eggs()) {
            return new Told.Nothing(WhyNot.MORE_SEEN_THAN_IN);
        }
        return first.isKnownEggByEgg() && second.isKnownEggByEgg()
                ? new Told.EggByEgg(table())
                : new Told.TotalsOnly(totals());
    }

    /** The same looks with the second first. */
    BlindPair turned() {
        return new BlindPair(/* first= */ second, /* second= */ first);
    }

    private HashSet<Integer> marked() {
        var marked = new HashSet<>(first.places().keySet());
        marked.addAll(second.places().keySet());
        return marked;
    }

    private AgreementTable table() {
        var counts = new long[WORDS.size()][WORDS.size()];
        var marked = marked();
        for (var place : marked) {
            counts[at(first, place)][at(second, place)]++;
        }
        int live = WORDS.indexOf(Finding.LIVE);
        counts[live][live] += first.eggs() - marked.size();
        return new AgreementTable(
                words(),
                Arrays.stream(counts)
                        .map(row -> Arrays.stream(row).boxed().toList())
                        .toList());
    }

    private static int at(SeenAtLook look, int place) {
        return WORDS.indexOf(look.places().getOrDefault(place, Finding.LIVE));
    }

    private AgreementMargins totals() {
        return new AgreementMargins(words(), totals(first), totals(second));
    }

    private static List<Long> totals(SeenAtLook look) {
        return WORDS.stream().map(finding -> (long) look.seen(finding)).toList();
    }

    static List<String> words() {
        return WORDS.stream().map(Finding::word).toList();
    }
}
