package eggwright.desk.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import eggwright.book.entry.Scope;
import eggwright.book.name.BasketName;
import eggwright.book.name.OrderNumber;
import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.Discrepancy.About;
import eggwright.book.picture.Discrepancy.What;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.ShelfKey;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class DoubtWordsTest {
    private static final DoubtWords WORDS = new DoubtWords(Locale.ENGLISH);
    private static final About TRAY = new About.Eggs(Scope.ofLoad(new SetName("14"), new TrayName("7")));

    private static String say(DiscrepancyKind kind, About about, int counted, int held, What what) {
        return WORDS.say(new Discrepancy(kind, List.of(), about, counted, held, what));
    }

    @Test
    void doubt_namesTheTrayAndTheNumbers() {
        assertEquals(
                "Set 14, tray 7 counts 62 eggs but 54 were there. The count is kept. Look at the tray again, or mend the set.",
                say(DiscrepancyKind.MORE_SEEN_THAN_IN, TRAY, 62, 54, What.Untold.UNTOLD));
        assertEquals(
                "Pen 4: 3 hens left, but the book knew of 2. Count the pen.",
                say(DiscrepancyKind.PEN_SHORT, new About.Birds(new PenName("4")), 3, 2, What.OfBirds.HENS));
        assertEquals(
                "Chukar chicks: 5 died, but the book knew of 3 in the brooders. The note is kept. Note the missing placing, or mend the count.",
                say(DiscrepancyKind.CHICKS_SHORT, new About.Chicks(Species.CHUKAR), 5, 3, What.OfChicks.CHICKS_DIED));
    }

    /** Whatever a doubt may be about and of, there are words for it. */
    @Test
    void doubt_hasWords_forWhateverItIsAbout() {
        var abouts = List.of(
                TRAY,
                new About.Eggs(Scope.ofBasket(new BasketName("B"))),
                new About.Shelf(new ShelfKey(null, Species.PHEASANT)),
                new About.Shelf(new ShelfKey(new PenName("4"), Species.PHEASANT)),
                new About.Birds(new PenName("4")),
                new About.Chicks(Species.CHUKAR),
                new About.Order(new OrderNumber("12")),
                new About.Notes());
        var whats = new ArrayList<What>(List.of(What.Gone.values()));
        whats.addAll(List.of(What.OfBirds.values()));
        whats.addAll(List.of(What.OfChicks.values()));
        whats.add(What.Untold.UNTOLD);
        Arrays.stream(Fate.values())
                .filter(f -> f.sort() == FateSort.LAMP || f.sort() == FateSort.TAKE_OFF)
                .map(What.OfFate::new)
                .forEach(whats::add);
        for (var kind : DiscrepancyKind.values()) {
            for (var about : abouts) {
                for (var what : whats) {
                    assertFalse(say(kind, about, 2, 1, what).isBlank());
                }
            }
        }
    }
}
