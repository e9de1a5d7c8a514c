package eggwright.desk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.EntryReason;
import eggwright.book.entry.HabitsNoted;
import eggwright.book.name.NameReason;
import eggwright.book.name.PenName;
import eggwright.book.store.BuyerReason;
import eggwright.trade.ProfileField;
import eggwright.trade.ValueReason;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import eggwright.units.QuantityReason;
import eggwright.units.Reason;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What the core refuses is said in the language of the page, never in the sentence that programmers read. */
class RefusalWordsTest {
    private static final RefusalWords WORDS = new RefusalWords(Locale.ENGLISH);

    private static String said(Executable refused) {
        return WORDS.say(assertThrows(OutOfRange.class, refused));
    }

    private static List<Reason> reasons() {
        return Stream.<Reason[]>of(
                        QuantityReason.values(),
                        NameReason.values(),
                        EntryReason.values(),
                        BuyerReason.values(),
                        ValueReason.values())
                .flatMap(Arrays::stream)
                .toList();
    }

    @Test
    void everyReason_hasASentence_ofItsOwn() {
        var words = Words.beside(RefusalWords.class, Locale.ENGLISH);
        for (var reason : reasons()) {
            assertTrue(words.knows(RefusalWords.key(reason)), reason.word());
        }
        assertEquals(
                reasons().size(),
                reasons().stream().map(Reason::word).distinct().count());
    }

    @Test
    void sentence_namesWhatWasTyped_andWhatIsRight() {
        assertEquals("“31.2” has no unit. Write 31.2g or 1.1oz.", said(() -> Mass.parse("31.2")));
        assertEquals("The name has 81 characters; the most is 80.", said(() -> new PenName("x".repeat(81))));
        assertEquals(
                "“hot” cannot stand here. Write a temperature, as 99.5F or 37.5C.",
                said(() -> ProfileField.SETTER_TEMPERATURE.read("hot")));
        assertEquals(
                "45 is not a day to candle on; they run from 1 to 40.",
                said(() -> new HabitsNoted(null, null, null, null, List.of(8, 45), null, null)));
    }

    @Test
    void sentence_ofAFaultOfOurs_saysNothingOfTheProgram() {
        var said = WORDS.say(new OutOfRange("A weight of NaN on rho 2 is not above 0"));
        assertFalse(said.contains("rho"), said);
    }
}
