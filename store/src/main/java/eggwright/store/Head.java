package eggwright.store;

import eggwright.book.name.FarmId;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * How far a book goes. Entries are only ever added, so that two books of one farm with the same head hold the same.
 *
 * @param count how many entries
 * @param lastSha256 of the text of the last one, 32 bytes; of no entry, 32 noughts
 */
public record Head(FarmId farm, long count, byte[] lastSha256) {
    public Head {
        lastSha256 = lastSha256.clone();
    }

    @Override
    public byte[] lastSha256() {
        return lastSha256.clone();
    }

    @Override
    public boolean equals(@org.jspecify.annotations.Nullable Object other) {
        return other instanceof Head head
                && farm.equals(head.farm)
                && count == head.count
                && Arrays.equals(lastSha256, head.lastSha256);
    }

    @Override
    public int hashCode() {
        return Long.hashCode(count) * 31 + Arrays.hashCode(lastSha256);
    }

    /** On one line; the same for the same head only. */
    @Override
    public String toString() {
        return count + " " + HexFormat.of().formatHex(lastSha256) + " " + farm.text();
    }
}
