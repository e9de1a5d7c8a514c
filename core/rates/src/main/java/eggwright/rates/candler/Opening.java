package eggwright.rates.candler;

import eggwright.book.fold.Effective;
import eggwright.book.picture.Fate;
import java.util.List;
import java.util.Map;

/**
 * Eggs opened on one occasion.
 *
 * @param of the parcels that they came from
 * @param named eggs by what they were; none of 0
 */
record Opening(Effective entry, Lots of, Map<Fate, Integer> named, From from) {
    Opening {
        named = Map.copyOf(named);
    }

    /** Which eggs were opened. */
    sealed interface From {
        /** Clears taken out at these looks, and nothing else. */
        record Clears(List<OneLook> of) implements From {
            /** All of them taken out at one of these looks. */
            boolean allAt(java.util.function.Predicate<OneLook> look) {
                return of.stream().allMatch(look);
            }
        }

        /** Eggs that no look took out: what was left at the end, or opened from the machine. */
        record LeftIn() implements From {}

        /** Both, or others too, and nobody can say which is which. */
        record Together() implements From {}
    }

    int named(Fate fate) {
        return named.getOrDefault(fate, 0);
    }
}
