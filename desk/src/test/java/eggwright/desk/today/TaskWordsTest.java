package eggwright.desk.today;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.desk.words.Words;
import eggwright.invented.DemoSeason;
import eggwright.today.DaySheet;
import eggwright.today.eggroom.Storage;
import eggwright.today.task.Bundle;
import eggwright.today.task.Habit;
import eggwright.today.task.Practice;
import eggwright.today.task.TaskKind;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class TaskWordsTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final Instant NOON = Instant.parse("2027-05-12T17:00:00Z");
    private static final TaskWords SENTENCES = new TaskWords(Locale.ENGLISH);

    private static DaySheet sheet() {
        var picture = Ledger.of(DemoSeason.of(NOON, ZONE).entries()).picture();
        return DaySheet.of(picture, NOON.atZone(ZONE));
    }

    private static Bundle first(TaskKind kind) {
        return Bundle.of(sheet().due()).stream()
                .filter(b -> b.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyKindOfWork_hasItsWords() {
        var words = Words.beside(TaskWords.class, Locale.ENGLISH);
        TaskWords.keys().forEach(key -> assertTrue(words.knows(key), key));
        for (var practice : Practice.values()) {
            assertTrue(words.knows("practice." + practice.word()), practice.word());
        }
        for (var habit : Habit.values()) {
            assertTrue(words.knows("why.habit." + habit.word()), habit.word());
        }
        for (var storage : Storage.values()) {
            assertTrue(words.knows("storage." + storage.word()), storage.word());
        }
    }

    @Test
    void sentence_namesSetTraysEggsPlaceAndDay_inOneLineForTheWholeSet() {
        var candling = Bundle.of(sheet().due()).stream()
                .filter(b -> b.kind() == TaskKind.CANDLE)
                .map(SENTENCES::sentence)
                .toList();
        assertEquals(1, candling.size(), candling.toString());
        assertTrue(
                candling.getFirst().matches("Candle set \\S+: \\d+ trays, \\d+ eggs, .*, shelves .* and .*, day 8"),
                candling.toString());
    }

    @Test
    void round_saysWhatIsLookedAt() {
        var line =
                new DayLines(SENTENCES).of(List.of(first(TaskKind.DAILY_ROUND))).getFirst();
        assertTrue(line.text().matches("Make the \\d\\d:\\d\\d round: .+"), line.text());
        assertEquals("Look at both bulbs, the water, whether the turner is tilted, the vents.", line.aside());
    }

    @Test
    void line_unfoldsToEveryTray_eachLeadingToItsOwnForm() {
        var bundle = first(TaskKind.CANDLE);
        var line = new DayLines(SENTENCES).of(List.of(bundle)).getFirst();
        var trays = line.details().stream().flatMap(d -> d.links().stream()).toList();
        assertEquals(bundle.trays().size(), trays.size());
        assertTrue(trays.stream().allMatch(t -> t.path().matches("/notes/looked\\?set=.+&tray=.+")), trays.toString());
        assertTrue(
                line.details().getLast().text().startsWith("Why now: "),
                line.details().toString());
    }
}
