package eggwright.desk.farm;

import eggwright.book.picture.Picture;
import eggwright.book.picture.ShelfPicture;
import eggwright.desk.farm.LedgerPage.Cell;
import eggwright.desk.farm.LedgerPage.Sheet;
import eggwright.desk.words.Words;
import eggwright.trade.SpeciesProfile;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** What waits in the egg room, by pen. */
final class ShelfSheet {
    private ShelfSheet() {}

    static Sheet of(Picture picture, Words words, LocalDate today) {
        var rows = new ArrayList<List<Cell>>();
        for (var shelf : picture.eggRoom().values()) {
            if (shelf.eggs() > 0) {
                rows.add(List.of(
                        Cell.of(name(shelf, words)),
                        Cell.of(words.species(shelf.key().species())),
                        Cell.of(shelf.eggs()),
                        Cell.of(age(shelf, today, words))));
            }
        }
        return new Sheet(
                words.say("eggRoom.title"),
                rows.isEmpty() ? words.say("eggRoom.none") : "",
                List.of(
                        words.say("head.pen"),
                        words.say("head.species"),
                        words.say("head.eggs"),
                        words.say("head.oldest")),
                rows);
    }

    static String name(ShelfPicture shelf, Words words) {
        var pen = shelf.key().pen();
        return pen == null ? words.say("noPen") : pen.text();
    }

    private static String age(ShelfPicture shelf, LocalDate today, Words words) {
        var oldest = shelf.stored().getFirst().laidFrom();
        if (oldest == null) {
            return words.say("ageUnknown");
        }
        long days = ChronoUnit.DAYS.between(oldest, today);
        double advised =
                SpeciesProfile.of(shelf.key().species()).storageAdvisedDays().value();
        return words.say(days > advised ? "ageOver" : "age", days, Math.round(advised));
    }
}
