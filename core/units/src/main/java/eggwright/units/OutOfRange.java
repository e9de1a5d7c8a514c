package eggwright.units;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A value outside what a quantity or formula is made for. The message, in English, names the thing, the number, the unit
 * and the limit. A value that a person may have typed is refused with a {@link Reason} too, to be said in that person's
 * language.
 */
public final class OutOfRange extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient @Nullable Reason reason;
    private final transient List<Object> values;

    public OutOfRange(String message) {
        super(message);
        reason = null;
        values = List.of();
    }

    /**
     * With its reason.
     *
     * @param message in English
     * @param values that the reason names: numbers, days, texts as they were typed
     */
    public OutOfRange(Reason reason, String message, Object... values) {
        super(message);
        this.reason = reason;
        this.values = List.of(values);
    }

    /** Empty where no person can have typed the value. */
    public Optional<Reason> reason() {
        return Optional.ofNullable(reason);
    }

    /** What the reason names. */
    public List<Object> values() {
        return values;
    }

    /** Refuses a value that is not inside the closed range; NaN is never inside. */
    public static double check(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new OutOfRange(
                    QuantityReason.OUTSIDE,
                    what + " " + value + " " + unit + " is outside " + low + " to " + high + " " + unit,
                    value,
                    low,
                    high,
                    unit);
        }
        return value;
    }
}
