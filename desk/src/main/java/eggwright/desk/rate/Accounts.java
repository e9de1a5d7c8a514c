package eggwright.desk.rate;

import eggwright.book.picture.Fate;
import eggwright.desk.picture.AccountBar;
import eggwright.desk.picture.Ink;
import eggwright.desk.picture.Numbers;
import eggwright.desk.words.Words;
import eggwright.rates.account.ExpectedSplit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Draws what became of eggs as one bar. */
public final class Accounts {
    private Accounts() {}

    /**
     * @param eggs that the bar is as long as
     * @param fates of these eggs alone
     * @param withOthers eggs whose fate is known only together with others'; with the fates they add up to the eggs
     */
    public static AccountBar bar(
            String title,
            String says,
            int eggs,
            Map<Fate, Integer> fates,
            int withOthers,
            Optional<Expectation> expected,
            Locale language) {
        var words = Words.beside(Accounts.class, language);
        var parts = new ArrayList<AccountBar.Part>();
        var numbers = new ArrayList<List<String>>();
        for (var fate : Fate.values()) {
            int count = fates.getOrDefault(fate, 0);
            double usual =
                    expected.map(e -> e.split().eggs().getOrDefault(fate, 0.0)).orElse(0.0);
            var label = words.say("fate." + fate.word());
            if (count > 0) {
                parts.add(new AccountBar.Part(label, count, Fates.ink(fate)));
            }
            if (count > 0 || usual > 0) {
                numbers.add(line(label, count, expected.map(e -> usual == 0 ? "" : words.say("expected.eggs", usual))));
            }
        }
        if (withOthers > 0) {
            var label = words.say("fate.withOthers");
            parts.add(new AccountBar.Part(label, withOthers, Ink.WITH_OTHERS));
            numbers.add(line(label, withOthers, expected.map(e -> "")));
        }
        var heads = new ArrayList<>(List.of(words.say("head.fate"), words.say("head.eggs")));
        expected.ifPresent(e -> heads.add(e.label()));
        return new AccountBar(
                "account",
                title,
                says,
                eggs,
                eggs,
                parts,
                expected.map(e -> new AccountBar.Expected(e.label(), shares(e.split(), words))),
                words.say("account.total", eggs),
                new Numbers(heads, numbers));
    }

    /**
     * What these eggs were expected to do.
     *
     * @param label which expectation it is, as "expected by day 8"
     */
    public record Expectation(String label, ExpectedSplit split) {}

    private static List<String> line(String label, int count, Optional<String> usual) {
        return usual.map(u -> List.of(label, Integer.toString(count), u))
                .orElseGet(() -> List.of(label, Integer.toString(count)));
    }

    /** A hairline has room for few words: fates that mean the same to a keeper stand together. */
    private static List<AccountBar.Share> shares(ExpectedSplit split, Words words) {
        var sums = new LinkedHashMap<String, Double>();
        for (var fate : Fate.values()) {
            double eggs = split.eggs().getOrDefault(fate, 0.0);
            if (eggs > 0) {
                sums.merge(words.say(kind(fate)), eggs, Double::sum);
            }
        }
        return sums.entrySet().stream()
                .map(e -> new AccountBar.Share(e.getKey(), e.getValue()))
                .toList();
    }

    private static String kind(Fate fate) {
        return switch (fate) {
            case INFERTILE, CLEAR_UNOPENED -> "kind.clear";
            case BLOOD_RING, DEAD, EARLY_DEAD, MID_DEAD, LATE_DEAD, PIPPED_DEAD, MALFORMED, PIPPED_ALIVE_LEFT ->
                "kind.died";
            case CRACKED, ROT, REMOVED_UNSORTED, CONTAMINATED, UNACCOUNTED -> "kind.spoilt";
            case DEAD_IN_BASKET, CULLED -> "kind.notToSell";
            case SALEABLE -> "kind.saleable";
            case IN_SETTER, IN_HATCHER -> "kind.stillIn";
        };
    }
}
