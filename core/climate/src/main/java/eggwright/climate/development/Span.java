package eggwright.climate.development;

import eggwright.units.OutOfRange;

/** A number that is not well known: between what it may honestly be, and what is likely. */
public record Span(double low, double likely, double high) {
    public Span {
        if (!(low <= likely && likely <= high)) {
            throw new OutOfRange("A span from " + low + " over " + likely + " to " + high + " is out of order");
        }
    }

    public static Span exactly(double value) {
        return new Span(value, value, value);
    }
}
