package eggwright.wire;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The one rule by which names in the program become names in files. */
final class Words {
    private static final ClassValue<Map<String, Object>> ENUMS = new ClassValue<>() {
        @Override
        protected Map<String, Object> computeValue(Class<?> type) {
            var words = new LinkedHashMap<String, Object>();
            for (var constant : type.getEnumConstants()) {
                words.put(of((Enum<?>) constant), constant);
            }
            return Collections.unmodifiableMap(words);
        }
    };

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

    /**
     * {@code BIRDS_IN} becomes {@code birds_in}. Enums that have a {@code word()} of their own say the same, as
     * {@code WordsTest} checks.
     */
    static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** The constants of an enum by their words, in order. */
    static Map<String, Object> in(Class<?> type) {
        return ENUMS.get(type);
    }
}
