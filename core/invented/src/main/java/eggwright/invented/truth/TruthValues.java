package eggwright.invented.truth;

import eggwright.trade.Species;
import eggwright.units.OutOfRange;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How single values are written in the text of a truth. */
final class TruthValues {
    private TruthValues() {}

    static String write(Object value) {
        return switch (value) {
            case Species it -> it.word();
            case Enum<?> it -> word(it);
            case List<?> it ->
                it.isEmpty() ? "none" : it.stream().map(TruthValues::write).collect(Collectors.joining(", "));
            case Double it ->
                it == Math.rint(it) && Math.abs(it) < 1e9 ? String.valueOf(it.longValue()) : it.toString();
            default -> value.toString();
        };
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * Reads a value of a component's type.
     *
     * @throws OutOfRange if the text is not such a value; the message says what is right
     */
    static Object read(Type type, String text) {
        if (type instanceof ParameterizedType list) {
            var of = list.getActualTypeArguments()[0];
            return text.equals("none")
                    ? List.of()
                    : Arrays.stream(text.split(",", -1))
                            .map(part -> read(of, part.strip()))
                            .toList();
        }
        if (!(type instanceof Class<?> one)) {
            throw new IllegalStateException("No form is known for " + type);
        }
        try {
            if (one == String.class) {
                return text;
            } else if (one == int.class || one == Integer.class) {
                return Integer.valueOf(text);
            } else if (one == double.class) {
                return Double.valueOf(text);
            } else if (one == LocalTime.class) {
                return LocalTime.parse(text);
            } else if (one == ZoneId.class) {
                return ZoneId.of(text);
            }
        } catch (NumberFormatException | DateTimeException wrong) {
            throw new OutOfRange("\"" + text + "\" is not " + form(one));
        }
        return constant(one, text);
    }

    private static Object constant(Class<?> type, String text) {
        for (var value : type.getEnumConstants()) {
            if (write(value).equals(text)) {
                return value;
            }
        }
        throw new OutOfRange("\"" + text + "\" is not one of "
                + Arrays.stream(type.getEnumConstants()).map(TruthValues::write).collect(Collectors.joining(", ")));
    }

    private static String form(Class<?> type) {
        if (type == LocalTime.class) {
            return "an hour such as 08:00";
        }
        if (type == ZoneId.class) {
            return "a time zone such as America/Chicago";
        }
        return type == double.class ? "a number such as 4 or 0.5" : "a whole number such as 14";
    }
}
