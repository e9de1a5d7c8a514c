package eggwright.cli.calc;

import eggwright.cli.voice.Refused;
import eggwright.units.OutOfRange;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The values that one calculation was given, as typed. Reading one that is missing or wrong refuses it by name.
 *
 * @param origin where they were typed
 * @param texts by input name; an empty one counts as not given
 */
public record Given(Origin origin, Map<String, String> texts) {
    /** What an option without a value stands for. */
    static final String YES = "yes";

    private static final String NO = "no";
    private static final double LARGEST_WHOLE = 1e15;

    /** Where values were typed, and so what a person calls them. */
    public enum Origin {
        OPTIONS,
        COLUMNS;

        String nameOf(String input) {
            return switch (this) {
                case OPTIONS -> "--" + input;
                case COLUMNS -> "Column \"" + input + "\"";
            };
        }
    }

    /** Copies the map. */
    public Given {
        texts = Map.copyOf(texts);
    }

    /** The text of an input, where one was given. */
    public Optional<String> text(String input) {
        return Optional.ofNullable(texts.get(input)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** The text of an input that has to be there. */
    public String needed(String input) {
        return text(input).orElseThrow(() -> new Refused(origin.nameOf(input) + " is still needed."));
    }

    /** A whole number, where one was given. */
    public Optional<Long> whole(String input) {
        return text(input).map(text -> {
            try {
                return Long.parseLong(text);
            } catch (NumberFormatException notWhole) {
                throw wrong(input, text, "a whole number", "54");
            }
        });
    }

    /** A whole number that has to be there. */
    public long neededWhole(String input) {
        needed(input);
        return whole(input).orElseThrow();
    }

    /** A number, where one was given. */
    public Optional<Double> number(String input) {
        return text(input).map(text -> {
            double number;
            try {
                number = Double.parseDouble(text);
            } catch (NumberFormatException notNumber) {
                throw wrong(input, text, "a number", "0.95, with a point");
            }
            // Java also reads "NaN", "Infinity" and "1d"; a person means none of them.
            if (!(Math.abs(number) <= LARGEST_WHOLE) || Character.isLetter(text.charAt(text.length() - 1))) {
                throw wrong(input, text, "a number", "0.95, with a point");
            }
            return number;
        });
    }

    /** A number that has to be there. */
    public double neededNumber(String input) {
        needed(input);
        return number(input).orElseThrow();
    }

    /** A quantity with its unit, where one was given. */
    public <T> Optional<T> quantity(String input, Function<String, T> parse) {
        return text(input).map(text -> {
            try {
                return parse.apply(text);
            } catch (OutOfRange outside) {
                throw wrong(input, sentence(outside));
            }
        });
    }

    /** A quantity with its unit that has to be there. */
    public <T> T neededQuantity(String input, Function<String, T> parse) {
        needed(input);
        return quantity(input, parse).orElseThrow();
    }

    /** Whether something that is said or not said was said. */
    public boolean isSaid(String input) {
        var text = text(input).orElse(NO).toLowerCase(Locale.ROOT);
        return switch (text) {
            case YES, "y", "true", "1" -> true;
            case NO, "n", "false", "0" -> false;
            default -> throw wrong(input, text, "yes or no", YES);
        };
    }

    /** What a formula or quantity says against a value, as a whole sentence. */
    static String sentence(OutOfRange outside) {
        var words = String.valueOf(outside.getMessage());
        return words.endsWith(".") || words.endsWith("?") ? words : words + ".";
    }

    /** A refusal of one value, with what would be right. */
    public Refused wrong(String input, String text, String wanted, String example) {
        return new Refused(
                origin.nameOf(input) + ": \"" + text + "\" is not " + wanted + ". Write it like " + example + ".");
    }

    /** A refusal of one value, in a sentence of its own. */
    public Refused wrong(String input, String sentence) {
        return new Refused(origin.nameOf(input) + ": " + sentence);
    }
}
