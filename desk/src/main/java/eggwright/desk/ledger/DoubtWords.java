package eggwright.desk.ledger;

import eggwright.book.picture.Discrepancy;
import eggwright.desk.words.Words;
import java.util.Locale;

/** What does not add up, in words: what happened, what was kept, what to do. */
public final class DoubtWords {
    private final Words words;

    public DoubtWords(Locale language) {
        this.words = Words.beside(DoubtWords.class, language);
    }

    public String say(Discrepancy doubt) {
        var about = doubt.about().isEmpty()
                ? ""
                : doubt.about().substring(0, 1).toUpperCase(words.language())
                        + doubt.about().substring(1);
        return words.say("doubt." + doubt.kind().word(), about, doubt.counted(), doubt.held(), what(doubt.what()));
    }

    private String what(String what) {
        var key = "what." + what;
        return words.knows(key) ? words.say(key) : what.replace('_', ' ');
    }
}
