package eggwright.rates;

import eggwright.book.name.NaturalOrder;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Orders and joins keys. */
final class Keys {
    /** Numbers by their value, the rest by letters, what was not recorded last. */
    static final Comparator<String> NATURAL = Comparator.<String, Boolean>comparing(Dimension.NOT_RECORDED::equals)
            .thenComparing(NaturalOrder::compare);

    private Keys() {}

    static List<String> sorted(Collection<String> keys) {
        return keys.stream().distinct().sorted(NATURAL).toList();
    }

    static String joined(List<String> sorted) {
        return String.join("+", sorted);
    }
}
