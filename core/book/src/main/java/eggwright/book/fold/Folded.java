package eggwright.book.fold;

import eggwright.book.picture.Discrepancy;
import java.util.List;

/** A folded part and what did not add up in it. */
record Folded<T>(T picture, List<Discrepancy> discrepancies) {
    Folded {
        discrepancies = List.copyOf(discrepancies);
    }
}
