package eggwright.desk.words;

import eggwright.trade.ProfileField;
import eggwright.trade.Species;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The texts of one feature in one language, from the {@code messages.properties} in its package.
 *
 * <p>A text said without arguments stands as written; one with arguments is a {@link MessageFormat}, so it uses ’ and
 * never a straight quote, as {@code TextsTest} checks.
 */
public final class Words {
    private static final ResourceBundle.Control ONLY_WHAT_WAS_ASKED =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final ResourceBundle texts;
    private final Locale language;

    private Words(ResourceBundle texts, Locale language) {
        this.texts = texts;
        this.language = language;
    }

    /**
     * The texts beside a class.
     *
     * @throws MissingResourceException if its package has no {@code messages.properties}
     */
    public static Words beside(Class<?> type, Locale language) {
        return new Words(
                ResourceBundle.getBundle(
                        type.getPackageName() + ".messages", language, type.getClassLoader(), ONLY_WHAT_WAS_ASKED),
                language);
    }

    /**
     * One text, with its arguments in place. Whole numbers are grouped as the language does it.
     *
     * @throws MissingResourceException if there is no such text
     */
    public String say(String key, Object... arguments) {
        var text = texts.getString(key);
        return arguments.length == 0 ? text : new MessageFormat(text, language).format(arguments);
    }

    /** All texts whose keys begin so, as written, under what follows in their keys. */
    public SortedMap<String, String> all(String prefix) {
        var found = new TreeMap<String, String>();
        for (var key : texts.keySet()) {
            if (key.startsWith(prefix)) {
                found.put(key.substring(prefix.length()), texts.getString(key));
            }
        }
        return found;
    }

    /** What a bird is called in this language; files and commands keep {@link Species#word}. */
    public String species(Species species) {
        return shared("species." + species.name().toLowerCase(Locale.ROOT));
    }

    /** What a line of a species' profile is called in this language. */
    public String field(ProfileField field) {
        return shared("field." + field.word());
    }

    private String shared(String key) {
        return beside(Words.class, language).say(key);
    }

    /** Whether there is such a text. */
    public boolean knows(String key) {
        return texts.containsKey(key);
    }

    public Locale language() {
        return language;
    }
}
