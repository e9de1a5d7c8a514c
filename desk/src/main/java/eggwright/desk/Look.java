package eggwright.desk;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How the pages are coloured, as this browser was told. */
public enum Look {
    /** As the system says. */
    SYSTEM,
    /** Light. */
    PAPER,
    /** Dark. */
    DUSK;

    static final String COOKIE = "look";
    /** The name of the buttons that choose it. */
    public static final String FIELD = "colours";

    /** The word in the page, the cookie and the form. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Look> of(String word) {
        return Stream.of(values()).filter(look -> look.word().equals(word)).findFirst();
    }
}
