package eggwright.wire;

import eggwright.book.entry.Entry;

/** What came of reading an entry. */
public sealed interface ReadEntry {
    /**
     * Well formed. A kind or payload version that this program does not know is carried along as an
     * {@link eggwright.book.entry.UnknownPayload}; the entry keeps the version with which it came.
     */
    record Whole(Entry entry) implements ReadEntry {}

    /** Not an entry. The reason names the field, the value and what would be right. */
    record Malformed(String reason) implements ReadEntry {}
}
