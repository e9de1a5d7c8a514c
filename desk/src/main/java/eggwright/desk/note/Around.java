package eggwright.desk.note;

import eggwright.book.picture.Picture;
import eggwright.book.store.Buyer;
import eggwright.desk.form.Typed;
import eggwright.desk.words.Words;
import java.time.ZonedDateTime;
import java.util.List;

/**
 * What a form is opened in: the book as it stands, the time, and what the link that led here already knew.
 *
 * @param buyers those with a name
 * @param asked the question after the path, as {@code ?set=14&tray=7}
 */
public record Around(Picture picture, List<Buyer> buyers, ZonedDateTime now, Words words, Typed asked) {
    public Around {
        buyers = List.copyOf(buyers);
    }

    public String say(String key, Object... arguments) {
        return words.say(key, arguments);
    }
}
