package eggwright.desk;

import eggwright.desk.assets.Assets;
import eggwright.desk.words.Words;
import java.util.Locale;

/**
 * What stands around every page.
 *
 * @param farm its name
 * @param look of this browser
 * @param path that this page was asked for under; where the choice of look comes back to
 */
public record Frame(String farm, Look look, String path, Words words, Assets assets) {
    /** A text of the frame itself. */
    public String say(String key, Object... arguments) {
        return words.say(key, arguments);
    }

    /** The address of a style sheet, script, icon or typeface. */
    public String asset(String name) {
        return assets.url(name);
    }

    public Locale language() {
        return words.language();
    }

    /** The name of a place. */
    public String name(Place place) {
        return words.say("place." + place);
    }
}
