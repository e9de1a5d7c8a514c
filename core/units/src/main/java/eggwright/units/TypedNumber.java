package eggwright.units;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** A number with its unit, as a person typed it: {@code 99.5F}, {@code 31.2 g}. */
record TypedNumber(double number, String unit) {
    private static final Pattern FORM =
            Pattern.compile("\\s*([-+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+))\\s*(°?[A-Za-z%]+)?\\s*");

    /** Empty where the text is not a number; the unit is empty text where none was written. */
    static Optional<TypedNumber> read(String text) {
        var match = FORM.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        var unit = match.group(2) == null ? "" : match.group(2).replace("°", "").toLowerCase(Locale.ROOT);
        return Optional.of(new TypedNumber(Double.parseDouble(match.group(1)), unit));
    }
}
