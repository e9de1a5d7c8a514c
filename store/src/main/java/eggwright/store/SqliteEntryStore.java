package eggwright.store;

import eggwright.book.entry.Kept;
import eggwright.book.name.FarmId;
import eggwright.book.store.EntryStore;
import eggwright.book.store.Offered;
import eggwright.book.store.Outcome;
import eggwright.book.store.Refusal;
import eggwright.store.StoreFault.Why;
import eggwright.wire.BookLines;
import eggwright.wire.EntryCodec;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * The book in one SQLite file: write-ahead log, full synchronous, one writer behind a fair lock, readers beside it. Opened
 * by {@link DataFolder}. Safe for many threads.
 */
public final class SqliteEntryStore implements EntryStore {
    private final Path file;
    private final FarmId farm;
    private final Writer writer;
    private final Readers readers;
    private final Runnable letGo;

    SqliteEntryStore(Path file, FarmId farm, Writer writer, Readers readers, Runnable letGo) {
        this.file = file;
        this.farm = farm;
        this.writer = writer;
        this.readers = readers;
        this.letGo = letGo;
    }

    @Override
    public FarmId farm() {
        return farm;
    }

    /** The people behind buyer numbers. */
    public PeopleStore people() {
        return new PeopleStore(this);
    }

    /** What the desk remembers for itself. */
    public SettingStore settings() {
        return new SettingStore(this);
    }

    /** What sensors read. */
    public SqliteReadingStore readings() {
        return new SqliteReadingStore(this);
    }

    /** Who may use the desk from elsewhere. */
    public DeviceStore devices() {
        return new DeviceStore(this);
    }

    /** Sensors with a token of their own. */
    public SensorStore sensors() {
        return new SensorStore(this);
    }

    @Override
    public Outcome append(Offered offered, Instant received) {
        return switch (appendAll(List.of(offered), received)) {
            case Batch.AllKept(var outcomes) -> outcomes.getFirst();
            case Batch.NoneKept(var why) -> new Outcome.Refused(why.getFirst());
        };
    }

    @Override
    public Batch appendAll(List<Offered> offered, Instant received) {
        return take(offered.stream().map(one -> new Arrival(one, received)).toList());
    }

    /**
     * Brings in entries that were received elsewhere, each with its own time of receipt: a simulated season, another
     * book. All or none.
     */
    public Batch bringIn(List<Kept> entries) {
        return take(entries.stream()
                .map(kept -> arrival(kept, EntryCodec.write(kept.entry())))
                .toList());
    }

    /** The same, from the lines of an exported book, each entry's text as it lay there. */
    public Batch bringInLines(List<BookLines.Line.Whole> lines) {
        return take(
                lines.stream().map(line -> arrival(line.kept(), line.written())).toList());
    }

    private record Arrival(Offered offered, Instant received) {}

    private static Arrival arrival(Kept kept, String written) {
        return new Arrival(new Offered(kept.entry(), written, kept.clockOffset()), kept.received());
    }

    private Batch take(List<Arrival> arrivals) {
        try {
            return writer.inOneGo((connection, entries) -> offer(connection, entries, arrivals));
        } catch (SQLException fault) {
            return new Batch.NoneKept(List.of(new Refusal.NotSaved(Reasons.of(fault))));
        }
    }

    private Writer.Done<Batch> offer(Connection connection, EntryInsert entries, List<Arrival> arrivals)
            throws SQLException {
        var outcomes = new ArrayList<Outcome>();
        var refusals = new ArrayList<Refusal>();
        for (var one : arrivals) {
            switch (offer(connection, entries, one.offered(), one.received())) {
                case Outcome.Added it -> outcomes.add(it);
                case Outcome.KeptBefore it -> outcomes.add(it);
                case Outcome.Refused(var why) -> refusals.add(why);
            }
        }
        return refusals.isEmpty()
                ? Writer.Done.keep(new Batch.AllKept(outcomes))
                : new Writer.Done<>(new Batch.NoneKept(refusals), Writer.Ending.UNDO);
    }

    private Outcome offer(Connection connection, EntryInsert entries, Offered offered, Instant received)
            throws SQLException {
        var entry = offered.entry();
        if (!entry.farm().equals(farm)) {
            return new Outcome.Refused(new Refusal.OtherFarm(farm, entry.farm()));
        }
        return switch (entries.put(offered, received)) {
            case ADDED -> new Outcome.Added(new Kept(entry, received, offered.clockOffset()));
            case ID_WAS_THERE -> {
                var known = EntryRows.find(connection, farm, entry.id())
                        .orElseThrow()
                        .kept();
                yield known.entry().isSameAs(entry)
                        ? new Outcome.KeptBefore(known)
                        : new Outcome.Refused(new Refusal.OtherContent(known.entry(), entry));
            }
        };
    }

    @Override
    public List<Kept> all() {
        return after(0);
    }

    @Override
    public List<Kept> after(long count) {
        return ask(connection -> EntryRows.after(connection, farm, count));
    }

    @Override
    public void eachWritten(BiConsumer<Kept, String> reader) {
        eachRow(0, Long.MAX_VALUE, row -> reader.accept(row.kept(), row.written()));
    }

    void eachRow(long after, long upTo, EntryRows.Reading reading) {
        ask(connection -> {
            EntryRows.each(connection, farm, after, upTo, reading);
            return upTo;
        });
    }

    @Override
    public long count() {
        return ask(connection -> EntryRows.last(connection, farm));
    }

    /** How far the book goes. */
    public Head head() {
        return head(Long.MAX_VALUE);
    }

    /** How far the book went when it held so many entries. */
    public Head head(long count) {
        return ask(connection -> EntryRows.head(connection, farm, count));
    }

    <T> T ask(Readers.Question<T> question) {
        try {
            return readers.ask(question);
        } catch (SQLException fault) {
            throw new StoreFault(
                    Why.DAMAGED,
                    file + " could not be read (" + Reasons.of(fault)
                            + "). Nothing was changed. Run verify, and restore the last backup if it says so.",
                    fault);
        }
    }

    Writer writer() {
        return writer;
    }

    Readers readers() {
        return readers;
    }

    /** Closes the book and lets go of the folder. */
    @Override
    public void close() {
        try {
            readers.close();
            writer.close();
        } catch (SQLException fault) {
            throw new StoreFault(
                    Why.NOT_WRITABLE, file + " could not be closed cleanly. What was acknowledged is kept.", fault);
        } finally {
            letGo.run();
        }
    }
}
