package eggwright.desk.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.picture.Fate;
import eggwright.desk.rate.Comparison.Figure;
import eggwright.desk.words.Words;
import eggwright.rates.Basis;
import eggwright.rates.Contrast;
import eggwright.rates.Dimension;
import eggwright.rates.Measure;
import eggwright.rates.Verdict;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RateWordsTest {
    @Test
    void everyKind_hasItsWords() {
        var wanted = new ArrayList<String>();
        for (var by : Dimension.values()) {
            wanted.addAll(List.of("by." + by.word(), "head." + by.word()));
            if (by != Dimension.NONE) {
                wanted.add("choice." + by.word());
            }
        }
        for (var figure : Figure.values()) {
            wanted.addAll(List.of("plot." + figure, "stands." + figure));
        }
        for (var verdict : Verdict.values()) {
            wanted.add("verdict." + verdict);
        }
        for (var measure : Measure.values()) {
            wanted.add("measure." + measure);
        }
        for (var basis : Basis.values()) {
            wanted.add("basis." + basis.word());
        }
        for (var fate : Fate.values()) {
            wanted.add("fate." + fate.word());
        }
        var words = Words.beside(RatePages.class, Locale.ENGLISH);
        wanted.forEach(key -> assertTrue(words.knows(key), key));
    }

    @ParameterizedTest
    @CsvSource({
        "0.0000001, 'under 1 in 1,000'",
        "0.0017, 1 in 590",
        "0.049, 1 in 20",
        "0.31, 31 in 100",
        "1, 100 in 100"
    })
    void chance_isSaid_asAPersonWould(double chance, String said) {
        assertEquals(said, new VerdictWords(Locale.ENGLISH).chance(chance));
    }

    @Test
    void verdict_saysWhichWay_onlyWhenItIsHardlyLuck() {
        var words = new VerdictWords(Locale.ENGLISH);
        var rest = new Rate(90, 100);

        assertEquals(
                "below the rest, hardly luck (1 in 500)",
                words.say(Optional.of(new Contrast.Compared("4", new Rate(60, 100), rest, 0.001, 0.002))));
        assertEquals(
                "could be luck (20 in 100)",
                words.say(Optional.of(new Contrast.Compared("4", new Rate(85, 100), rest, 0.1, 0.2))));
        assertEquals("too few eggs to tell", words.say(Optional.of(new Contrast.TooFew("4", new Rate(3, 4), rest))));
        assertEquals(
                "nothing to compare it with",
                words.say(Optional.of(new Contrast.TooFew("4", new Rate(60, 100), new Rate(0, 0)))));
        assertEquals("counted together, not compared", words.say(Optional.empty()));
    }

    @Test
    void keys_areNamed_asAPersonWould() {
        assertEquals("week of 5 Apr", new KeyWords(Dimension.SET_WEEK, Locale.ENGLISH).of("2027-W14"));
        assertEquals("7 days", new KeyWords(Dimension.STORAGE_DAYS, Locale.ENGLISH).of("7"));
        assertEquals("pen 4 + 9", new KeyWords(Dimension.PEN, Locale.ENGLISH).named(List.of("4", "9")));
        assertEquals("not recorded", new KeyWords(Dimension.PEN, Locale.ENGLISH).of(Dimension.NOT_RECORDED));
    }
}
