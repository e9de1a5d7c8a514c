package eggwright.desk.farm;

import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.desk.words.Words;
import eggwright.invented.DemoSeason;
import eggwright.today.DaySheet;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class TaskWordsTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");

    @Test
    void everyKindOfWork_hasItsWords() {
        var words = Words.beside(TaskWords.class, Locale.ENGLISH);
        TaskWords.keys().forEach(key -> assertTrue(words.knows(key), key));
    }

    @Test
    void sentence_namesSetTraysEggsPlaceAndDay() {
        var now = Instant.parse("2027-05-12T17:00:00Z");
        var picture = Ledger.of(DemoSeason.of(now, ZONE).entries()).picture();
        var sheet = DaySheet.of(picture, now.atZone(ZONE));
        var sentences = new TaskWords(Locale.ENGLISH);
        var all = sheet.due().stream().map(sentences::sentence).toList();
        assertTrue(
                all.stream().anyMatch(s -> s.matches("Candle set \\S+: \\d+ trays?, \\d+ eggs, .*, day 8")),
                all.toString());
    }
}
