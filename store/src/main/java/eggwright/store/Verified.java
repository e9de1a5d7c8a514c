package eggwright.store;

import java.util.List;
import java.util.SortedMap;

/**
 * What a look over a whole book found.
 *
 * @param byKind entries by kind
 * @param digest of all entries in the order received, SHA-256 in hex
 * @param faults what is not whole, in words; empty where all is
 */
public record Verified(long entries, SortedMap<String, Long> byKind, String digest, List<String> faults) {
    public Verified {
        faults = List.copyOf(faults);
    }

    public boolean isWhole() {
        return faults.isEmpty();
    }
}
