package eggwright.desk.ledger;

import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.Discrepancy.About;
import eggwright.book.picture.Discrepancy.What;
import eggwright.book.picture.ShelfKey;
import eggwright.desk.words.Words;
import java.util.Locale;

/** What does not add up, in words: what happened, what was kept, what to do. */
public final class DoubtWords {
    private final Words words;
    private final EntryWords entries;

    public DoubtWords(Locale language) {
        this.words = Words.beside(DoubtWords.class, language);
        this.entries = new EntryWords(language);
    }

    public String say(Discrepancy doubt) {
        return words.say(
                "doubt." + doubt.kind().word(),
                upperCaseFirst(about(doubt.about())),
                doubt.counted(),
                doubt.held(),
                what(doubt.what()));
    }

    /** Every text begins with what it is about. */
    private String upperCaseFirst(String about) {
        return about.isEmpty() ? "" : about.substring(0, 1).toUpperCase(words.language()) + about.substring(1);
    }

    private String about(About about) {
        return switch (about) {
            case About.Eggs it -> entries.scope(it.scope());
            case About.Shelf it -> shelf(it.key());
            case About.Birds it -> words.say("pen", it.pen().text());
            case About.Chicks it -> words.say("chicks", words.species(it.species()));
            case About.Order it -> words.say("order", it.order().text());
            case About.Notes it -> "";
        };
    }

    private String shelf(ShelfKey key) {
        return key.pen() == null
                ? words.say("shelf", words.species(key.species()))
                : words.say("pen", key.pen().text());
    }

    private String what(What what) {
        return switch (what) {
            case What.OfFate it -> words.say("what." + it.fate().word());
            case What.Gone it -> words.say("what." + it.name().toLowerCase(Locale.ROOT));
            case What.OfBirds it -> words.say("what." + it.name().toLowerCase(Locale.ROOT));
            case What.OfChicks it -> words.say("what." + it.name().toLowerCase(Locale.ROOT));
            case What.Untold it -> "";
        };
    }
}
