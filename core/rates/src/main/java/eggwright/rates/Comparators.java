package eggwright.rates;

import java.util.Comparator;

/** Orders keys as people do. */
final class Comparators {
    /** Numbers by their value, the rest by letters. */
    static final Comparator<String> NATURAL = (a, b) -> {
        var byNumber = a.matches("-?\\d{1,9}") && b.matches("-?\\d{1,9}")
                ? Integer.compare(Integer.parseInt(a), Integer.parseInt(b))
                : 0;
        return byNumber != 0 ? byNumber : a.compareTo(b);
    };

    private Comparators() {}
}
