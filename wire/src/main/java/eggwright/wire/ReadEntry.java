package eggwright.wire;

import eggwright.book.entry.Entry;

/** What came of reading an entry. */
public sealed interface ReadEntry {
    /** Well formed; a kind this version does not know is carried along as it came. */
    record Whole(Entry entry) implements ReadEntry {}

    /** Not an entry. The reason names the field, the value and what would be right. */
    record Malformed(String reason) implements ReadEntry {}
}
