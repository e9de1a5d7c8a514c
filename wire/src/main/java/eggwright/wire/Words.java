package eggwright.wire;

import java.util.Locale;

/** The one rule by which names in the program become names in files. */
final class Words {
    private Words() {}

    /** {@code laidFrom} becomes {@code laid_from}. */
    static String snake(String name) {
        var out = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (Character.isUpperCase(c)) {
                out.append('_').append(Character.toLowerCase(c));
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }

    /** {@code BIRDS_IN} becomes {@code birds_in}. */
    static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
