package eggwright.invented.chance;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * Independent random streams, each named by its purpose, so that a change in one part of a season leaves the draws of
 * all others as they were.
 */
public record Streams(long seed) {
    /** FNV-1a, 64 bits (Fowler, Noll, Vo; IETF draft-eastlake-fnv). */
    private static final long FNV_OFFSET = 0xcbf29ce484222325L;

    private static final long FNV_PRIME = 0x100000001b3L;

    /** The stream of a purpose, such as "eggs" of set 27-4, tray 7: the same every time it is asked for. */
    public RandomGenerator of(String purpose, Object... about) {
        long hash = add(FNV_OFFSET, purpose);
        for (var part : about) {
            hash = add(hash, part.toString());
        }
        return new SplittableRandom(mixed(seed ^ mixed(hash)));
    }

    private static long add(long hash, String text) {
        long now = hash;
        for (int i = 0; i < text.length(); i++) {
            now = (now ^ text.charAt(i)) * FNV_PRIME;
        }
        return (now ^ 0x1F) * FNV_PRIME;
    }

    /** The finisher of SplitMix64 (Steele, Lea and Flood 2014, OOPSLA), so that near seeds give far streams. */
    private static long mixed(long z) {
        long a = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        long b = (a ^ (a >>> 27)) * 0x94d049bb133111ebL;
        return b ^ (b >>> 31);
    }
}
