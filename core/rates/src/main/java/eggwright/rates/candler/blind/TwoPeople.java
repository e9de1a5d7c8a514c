package eggwright.rates.candler.blind;

import eggwright.book.name.PersonName;
import eggwright.stats.agreement.AgreementMargins;
import eggwright.stats.agreement.AgreementTable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All trays that two people both looked at, the second blind, whoever was the second.
 *
 * @param one the row of the table
 * @param other the column
 * @param eggByEgg trays of which it is known what each called each egg
 * @param totalsOnly trays of which only totals are known: they bound agreement, and give no kappa
 * @param notCompared pairs of looks that cannot be compared, by what keeps them from it; none of 0
 */
public record TwoPeople(
        PersonName one,
        PersonName other,
        List<AgreementTable> eggByEgg,
        List<AgreementMargins> totalsOnly,
        Map<BlindPair.WhyNot, Integer> notCompared) {
    public TwoPeople {
        eggByEgg = List.copyOf(eggByEgg);
        totalsOnly = List.copyOf(totalsOnly);
        notCompared = Map.copyOf(notCompared);
    }

    /**
     * Sorts pairs of looks by the two people, who stand in the order of their names. A pair of one person's looks is
     * left out, for nobody agrees or differs there.
     */
    public static List<TwoPeople> of(Collection<BlindPair> pairs) {
        var byPeople = new LinkedHashMap<List<PersonName>, List<BlindPair>>();
        for (var pair : pairs) {
            var a = pair.first().who();
            var b = pair.second().who();
            if (!a.equals(b)) {
                var turned = a.compareTo(b) <= 0 ? pair : pair.turned();
                byPeople.computeIfAbsent(
                                List.of(turned.first().who(), turned.second().who()), people -> new ArrayList<>())
                        .add(turned);
            }
        }
        return byPeople.entrySet().stream()
                .map(e -> of(e.getKey().get(0), e.getKey().get(1), e.getValue()))
                .sorted(Comparator.comparing(TwoPeople::one).thenComparing(TwoPeople::other))
                .toList();
    }

    private static TwoPeople of(PersonName one, PersonName other, List<BlindPair> pairs) {
        var tables = new ArrayList<AgreementTable>();
        var totals = new ArrayList<AgreementMargins>();
        var not = new EnumMap<BlindPair.WhyNot, Integer>(BlindPair.WhyNot.class);
        for (var pair : pairs) {
            switch (pair.told()) {
                case BlindPair.Told.EggByEgg(AgreementTable table) -> tables.add(table);
                case BlindPair.Told.TotalsOnly(AgreementMargins margins) -> totals.add(margins);
                case BlindPair.Told.Nothing(BlindPair.WhyNot why) -> not.merge(why, 1, Integer::sum);
            }
        }
        return new TwoPeople(one, other, tables, totals, not);
    }

    /** The sum of the trays known egg by egg; empty where there is none. */
    public Optional<AgreementTable> table() {
        if (eggByEgg.isEmpty()) {
            return Optional.empty();
        }
        int wide = BlindPair.WORDS.size();
        var sums = new ArrayList<List<Long>>();
        for (int i = 0; i < wide; i++) {
            var row = new ArrayList<Long>();
            for (int j = 0; j < wide; j++) {
                long sum = 0;
                for (var table : eggByEgg) {
                    sum += table.count(i, j);
                }
                row.add(sum);
            }
            sums.add(row);
        }
        return Optional.of(new AgreementTable(BlindPair.words(), sums));
    }

    /** Eggs of the trays of which only totals are known. */
    public long eggsByTotals() {
        return totalsOnly.stream().mapToLong(AgreementMargins::eggs).sum();
    }

    /** Of these, the fewest that both can have called the same, tray by tray. */
    public long leastAgreed() {
        return totalsOnly.stream().mapToLong(AgreementMargins::leastAgreed).sum();
    }

    /** Of these, the most that both can have called the same, tray by tray. */
    public long mostAgreed() {
        return totalsOnly.stream().mapToLong(AgreementMargins::mostAgreed).sum();
    }
}
