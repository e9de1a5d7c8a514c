package eggwright.climate.reading;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Keeps the readings of one farm, as they came. The same reading twice is kept once; nothing is ever changed or dropped.
 * Safe for use by many threads.
 */
public interface ReadingStore extends AutoCloseable {
    /** Every channel that has ever read anything. */
    List<Channel> channels();

    /** What a channel read from an instant on, before another. */
    Readings between(Channel channel, Instant from, Instant to);

    /** When a channel began and when it last read; empty where it never did. */
    Optional<Extent> extent(Channel channel);

    /** Takes readings; when this returns they survive a power cut. */
    Taken take(Channel channel, Readings readings);

    /** Begins a large load, of which all is kept or nothing. Others wait with their writing until it is closed. */
    Load load();

    @Override
    void close();

    /** The first and the last reading. */
    record Extent(Instant first, Instant last) {}

    /**
     * What became of readings.
     *
     * @param fresh now kept
     * @param before known already
     */
    record Taken(long fresh, long before) {
        public static final Taken NOTHING = new Taken(0, 0);

        public Taken plus(Taken more) {
            return new Taken(fresh + more.fresh, before + more.before);
        }
    }

    /** A large load, in any order. Closing without {@link #keep} leaves the store as it was. */
    interface Load extends AutoCloseable {
        void add(Channel channel, long atMillis, double value);

        /** Keeps all; they then survive a power cut. */
        Taken keep();

        @Override
        void close();
    }
}
