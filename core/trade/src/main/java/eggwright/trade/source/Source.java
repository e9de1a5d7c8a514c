package eggwright.trade.source;

import java.time.LocalDate;

/** Where a value comes from. */
public sealed interface Source {
    /** The source in words, short enough to stand beside the value. */
    String words();

    /**
     * A publication.
     *
     * @param key the short name used in the tables
     * @param reference authors or publisher, title, number and year where known
     * @param address where it was read
     * @param evidence how much of it was read
     */
    record Published(String key, String reference, String address, Evidence evidence) implements Source {
        @Override
        public String words() {
            return key + " (" + evidence.words() + ")";
        }
    }

    /** Done everywhere in the trade, written down nowhere that could be read. */
    record CommonPractice() implements Source {
        @Override
        public String words() {
            return "common practice, no source";
        }
    }

    /** Trade knowledge that no readable page confirmed: check it before use. */
    record FromMemory() implements Source {
        @Override
        public String words() {
            return "from memory";
        }
    }

    /**
     * Worked out from other figures.
     *
     * @param from which figures, and how
     */
    record Computed(String from) implements Source {
        @Override
        public String words() {
            return "computed: " + from;
        }
    }

    /**
     * Said by the farm itself, and stronger there than any book.
     *
     * @param since the day from which the farm uses it
     */
    record FarmOverride(LocalDate since) implements Source {
        @Override
        public String words() {
            return "this farm, since " + since;
        }
    }
}
