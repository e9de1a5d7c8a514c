package eggwright.cli.answer;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** The one place where a terminal's numbers are rounded: to six figures. */
public final class Shown {
    private static final MathContext SIX_FIGURES = new MathContext(6, RoundingMode.HALF_EVEN);

    private Shown() {}

    /** A value as a person reads it; of a group, only what there is. */
    public static String text(Value value) {
        return switch (value) {
            case Value.Real(double number) -> number(number);
            case Value.Whole(long number) -> Long.toString(number);
            case Value.Truth(boolean yes) -> yes ? "yes" : "no";
            case Value.Text(String text) -> text;
            case Value.Many many -> many.values().stream().map(Shown::text).collect(Collectors.joining(", "));
            case Value.Group(Answer answer) ->
                answer.fields().stream()
                        .filter(field -> !text(field.value()).isEmpty())
                        .map(field -> field.key().replace('_', ' ') + " " + text(field.value()))
                        .collect(Collectors.joining(", "));
        };
    }

    private static String number(double number) {
        if (!Double.isFinite(number)) {
            return "";
        }
        var rounded = new BigDecimal(number).round(SIX_FIGURES).stripTrailingZeros();
        return rounded.precision() - rounded.scale() > 15 || rounded.scale() > 12
                ? rounded.toString()
                : rounded.toPlainString();
    }
}
