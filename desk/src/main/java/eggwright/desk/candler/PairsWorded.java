package eggwright.desk.candler;

import eggwright.desk.candler.CandlersPage.Fact;
import eggwright.desk.candler.CandlersPage.Pair;
import eggwright.desk.part.RateShown;
import eggwright.desk.words.Words;
import eggwright.rates.candler.blind.TwoPeople;
import eggwright.stats.agreement.AgreementTable;
import eggwright.stats.agreement.Kappa;
import eggwright.stats.agreement.SpecificAgreement;
import eggwright.stats.interval.Intervals;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words and rounds what blind looks tell of two people. */
final class PairsWorded {
    private static final double LEVEL = 0.95;

    private final Words words;

    PairsWorded(Locale language) {
        this.words = Words.beside(PairsWorded.class, language);
    }

    List<Pair> pairs(List<TwoPeople> two) {
        return two.stream()
                .map(t -> new Pair(words.say("pair", t.one().text(), t.other().text()), facts(t)))
                .toList();
    }

    private List<Fact> facts(TwoPeople two) {
        var facts = new ArrayList<Fact>();
        two.table().ifPresent(table -> eggByEgg(table, facts));
        if (!two.totalsOnly().isEmpty()) {
            facts.add(
                    text("totals", words.say("totals.text", two.eggsByTotals(), two.leastAgreed(), two.mostAgreed())));
        }
        two.notCompared().entrySet().stream()
                .sorted(java.util.Map.Entry.comparingByKey())
                .forEach(e -> facts.add(text(
                        "notCompared",
                        words.say("notCompared." + e.getKey().name().toLowerCase(Locale.ROOT), e.getValue()))));
        return facts;
    }

    private void eggByEgg(AgreementTable table, List<Fact> facts) {
        var agreed = new Rate((int) table.agreed(), (int) table.eggs());
        var limits = Intervals.wilson95(agreed);
        facts.add(new Fact(
                words.say("fact.agreed"),
                List.of(RateShown.of(
                        agreed.count(), agreed.of(), 100 * limits.low(), 100 * limits.high(), words.language())),
                ""));
        facts.add(text(
                "kappa",
                switch (Kappa.of(table, LEVEL)) {
                    case Kappa.Estimated it -> words.say("kappa.text", two(it.kappa()), two(it.low()), two(it.high()));
                    case Kappa.Undefined none -> words.say("kappa.none");
                }));
        for (var on : table.onEach()) {
            if (!on.isEmpty()) {
                facts.add(new Fact(words.say("fact.on", words.say("finding." + on.category())), List.of(), on(on)));
            }
        }
    }

    /** Of the eggs that either called so, doubled as the definition has it; in words, so that nobody adds them up. */
    private String on(SpecificAgreement on) {
        var limits = on.interval(LEVEL);
        return words.say(
                "on.text",
                on.agreed(),
                on.differed(),
                RateShown.share(100 * on.estimate(), 100 * limits.low(), 100 * limits.high(), words.language()));
    }

    private Fact text(String key, String text) {
        return new Fact(words.say("fact." + key), List.of(), text);
    }

    private String two(double number) {
        return String.format(words.language(), "%.2f", number);
    }
}
