package eggwright.units;

/** A value outside what a quantity or formula is made for. The message names the thing, the number, the unit and the limit. */
public final class OutOfRange extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public OutOfRange(String message) {
        super(message);
    }

    /** Refuses a value that is not inside the closed range; NaN is never inside. */
    public static double check(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new OutOfRange(what + " " + value + " " + unit + " is outside " + low + " to " + high + " " + unit);
        }
        return value;
    }
}
