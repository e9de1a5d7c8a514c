package eggwright.invented.truth;

import java.util.List;

/** What came of reading the text of a truth. */
public sealed interface TruthReading {
    record Read(Truth truth) implements TruthReading {}

    /**
     * Nothing was read.
     *
     * @param reasons every mistake that was found, each with its line
     */
    record Refused(List<String> reasons) implements TruthReading {
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }
}
