package eggwright.book.store;

import eggwright.book.entry.Kept;
import eggwright.book.name.FarmId;
import java.time.Instant;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * Keeps the entries of one farm: append-only, idempotent by id, durable once acknowledged. Safe for use by many threads.
 */
public interface EntryStore extends AutoCloseable {
    FarmId farm();

    /**
     * Takes one entry into the book. When this returns {@link Outcome.Added} or {@link Outcome.KeptBefore}, the entry
     * survives a power cut.
     *
     * @param received the desk's clock
     */
    Outcome append(Offered offered, Instant received);

    /**
     * Takes all or none: if any is refused, nothing of this call is in the book. One outcome for each, in order; when one
     * is refused, the others that were new are not reported as added but left out.
     */
    Batch appendAll(List<Offered> offered, Instant received);

    /** What became of a batch. */
    sealed interface Batch {
        /** All are in the book; some may have been there before. */
        record AllKept(List<Outcome> outcomes) implements Batch {}

        /** Nothing was written. */
        record NoneKept(List<Refusal> why) implements Batch {}
    }

    /** All entries, in the order in which they were received. */
    List<Kept> all();

    /** Entries received after the first {@code count}. */
    List<Kept> after(long count);

    /** How many entries there are. */
    long count();

    /** Each entry with its bytes as they came, in the order received. */
    void eachWritten(BiConsumer<Kept, String> reader);

    @Override
    void close();
}
