package eggwright.units;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** A number with its unit, as a person typed it: {@code 99.5F}, {@code 31.2 g}. */
record TypedNumber(double number, String unit) {
    private static final Pattern FORM =
            Pattern.compile("\\s*([-+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*(°?[A-Za-z%]+)?\\s*");

    /** Empty where the text is not a number; the unit is empty text where none was written. */
    static Optional<TypedNumber> read(String text) {
        var match = FORM.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        var unit = match.group(2) == null ? "" : match.group(2).replace("°", "").toLowerCase(Locale.ROOT);
        return Optional.of(new TypedNumber(Double.parseDouble(match.group(1)), unit));
    }

    /**
     * The number and one of these units, whatever the case of its letters.
     *
     * @param what as {@code a pressure}
     * @param example how to write one, as {@code 101.3kPa or 29.9inHg}
     * @throws OutOfRange if the text is not a number with one of these units
     */
    static <U> Typed<U> read(
            String text, String what, String example, List<U> units, Function<U, String> symbol, Refused why) {
        var typed = read(text)
                .orElseThrow(() -> new OutOfRange(
                        why.notOne(), "\"" + text + "\" is not " + what + ". Write " + example + ".", text));
        if (typed.unit().isEmpty()) {
            throw new OutOfRange(why.withoutUnit(), "\"" + text + "\" has no unit. Write " + example + ".", text);
        }
        for (var unit : units) {
            if (symbol.apply(unit).toLowerCase(Locale.ROOT).equals(typed.unit())) {
                return new Typed<>(typed.number(), unit);
            }
        }
        throw new OutOfRange(
                why.otherUnit(),
                "\"" + text + "\" has a unit that is not "
                        + listed(units.stream().map(symbol).toList()) + ". Write " + example + ".",
                text);
    }

    /** Why a text is refused, for the words of other languages. */
    record Refused(Reason notOne, Reason withoutUnit, Reason otherUnit) {}

    /** A number with a unit that is known. */
    record Typed<U>(double number, U unit) {}

    private static String listed(List<String> words) {
        return String.join(", ", words.subList(0, words.size() - 1)) + " or " + words.getLast();
    }
}
