package eggwright.desk;

import java.security.SecureRandom;
import java.util.random.RandomGenerator;

/** The short number that a fault is shown and logged under, so that a page and the log can be laid side by side. */
final class Note {
    /** Without letters and digits that are read for one another. */
    private static final String SIGNS = "23456789ACDEFGHJKLMNPQRTUVWXY";

    private static final int LENGTH = 5;

    private Note() {}

    static String fresh() {
        return of(new SecureRandom());
    }

    static String of(RandomGenerator random) {
        var text = new StringBuilder(LENGTH);
        for (var i = 0; i < LENGTH; i++) {
            text.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        return text.toString();
    }
}
