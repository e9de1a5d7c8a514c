package eggwright.book.name;

import eggwright.units.OutOfRange;
import java.util.UUID;

/**
 * The id of an entry: a UUID of version 7 (RFC 9562) made on the device that noted it, or of version 8 (derived from the
 * content) for imported rows. Ordered as unsigned numbers, which for version 7 is by time of making.
 */
public record EntryId(UUID value) implements Comparable<EntryId> {
    /** Reads the 36-character form. */
    public static EntryId parse(String text) {
        try {
            var value = UUID.fromString(text);
            if (!value.toString().equalsIgnoreCase(text)) {
                throw new IllegalArgumentException(text);
            }
            return new EntryId(value);
        } catch (IllegalArgumentException notOne) {
            throw new OutOfRange(
                    NameReason.NOT_AN_ENTRY_ID,
                    "\"" + text + "\" is not an entry id. It looks like 01976b2e-7c00-7000-8000-000000000000.",
                    text);
        }
    }

    /**
     * Makes a version 7 id from a clock reading and 74 random bits.
     *
     * @param epochMillis milliseconds since 1970, 48 bits
     */
    public static EntryId of(long epochMillis, long randomA, long randomB) {
        long most = (epochMillis << 16) | 0x7000L | (randomA & 0xFFFL);
        long least = 0x8000_0000_0000_0000L | (randomB & 0x3FFF_FFFF_FFFF_FFFFL);
        return new EntryId(new UUID(most, least));
    }

    /** Makes a version 8 id from 16 bytes of a digest of the content. */
    public static EntryId derived(long digestA, long digestB) {
        long most = (digestA & 0xFFFF_FFFF_FFFF_0FFFL) | 0x8000L;
        long least = 0x8000_0000_0000_0000L | (digestB & 0x3FFF_FFFF_FFFF_FFFFL);
        return new EntryId(new UUID(most, least));
    }

    @Override
    public int compareTo(EntryId other) {
        int order = Long.compareUnsigned(value.getMostSignificantBits(), other.value.getMostSignificantBits());
        return order != 0
                ? order
                : Long.compareUnsigned(value.getLeastSignificantBits(), other.value.getLeastSignificantBits());
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
