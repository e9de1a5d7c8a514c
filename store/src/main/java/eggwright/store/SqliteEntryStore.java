package eggwright.store;

import eggwright.book.entry.Kept;
import eggwright.book.name.FarmId;
import eggwright.book.store.EntryStore;
import eggwright.book.store.Offered;
import eggwright.book.store.Outcome;
import eggwright.book.store.Refusal;
import eggwright.wire.EntryCodec;
import eggwright.wire.ReadEntry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BiConsumer;

/** The book in one SQLite file: write-ahead log, full synchronous, one writer behind a fair lock. */
public final class SqliteEntryStore implements EntryStore {
    /** Version of the tables that this program writes. */
    static final int VERSION = 1;
    /** "Eggw": marks the file as a book. */
    private static final int APPLICATION = 0x45676777;

    /** Lets go of the folder. */
    interface Release {
        void release() throws IOException;
    }

    private final ReentrantLock lock = new ReentrantLock(true);
    private final Connection connection;
    private final FarmId farm;
    private final Release release;

    private SqliteEntryStore(Connection connection, FarmId farm, Release release) {
        this.connection = connection;
        this.farm = farm;
        this.release = release;
    }

    static SqliteEntryStore reading(Path file) {
        try {
            var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
            try {
                pragmas(connection);
                try (var statement = connection.createStatement()) {
                    statement.execute("pragma query_only = on");
                }
                check(connection, file);
                return new SqliteEntryStore(connection, farmIn(connection).orElseThrow(() -> noBook(file)), () -> {});
            } catch (SQLException | RuntimeException fault) {
                connection.close();
                throw fault;
            }
        } catch (SQLException broken) {
            throw unreadable(file, broken);
        }
    }

    static SqliteEntryStore writing(Path file, FarmId fresh, Release release) {
        try {
            var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
            try {
                if (check(connection, file) == 0) {
                    pragmas(connection);
                    migrate(connection, fresh);
                } else {
                    pragmas(connection);
                }
                return new SqliteEntryStore(connection, farmIn(connection).orElseThrow(() -> noBook(file)), release);
            } catch (SQLException | RuntimeException fault) {
                connection.close();
                throw fault;
            }
        } catch (SQLException broken) {
            throw unreadable(file, broken);
        }
    }

    private static StoreFault noBook(Path file) {
        return new StoreFault(
                file + " holds no farm. Nothing was changed. Restore the last backup into an empty folder.");
    }

    private static StoreFault unreadable(Path file, SQLException broken) {
        return new StoreFault(
                file + " could not be opened as a book (" + broken.getMessage()
                        + "). Nothing was changed. Restore the last backup into an empty folder.",
                broken);
    }

    private static void pragmas(Connection connection) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute("pragma busy_timeout = 10000");
            statement.execute("pragma journal_mode = wal");
            statement.execute("pragma synchronous = full");
            statement.execute("pragma foreign_keys = on");
        }
    }

    private static int check(Connection connection, Path file) throws SQLException {
        int version = number(connection, "pragma user_version");
        if (version > VERSION) {
            throw new StoreFault("The book " + file + " was made by a newer Eggwright (version " + version
                    + "; this one knows up to " + VERSION + "). Nothing was touched. Start the newer one.");
        }
        if (version > 0 && number(connection, "pragma application_id") != APPLICATION) {
            throw new StoreFault(file + " is a database, but not a book of Eggwright. Nothing was touched.");
        }
        return version;
    }

    private static int number(Connection connection, String sql) throws SQLException {
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery(sql)) {
            return rows.getInt(1);
        }
    }

    private static void migrate(Connection connection, FarmId fresh) throws SQLException {
        connection.setAutoCommit(false);
        try (var statement = connection.createStatement();
                var resource = SqliteEntryStore.class.getResourceAsStream("sqlite/0001_book.sql")) {
            if (resource == null) {
                throw new IllegalStateException("The first migration is missing");
            }
            for (var sql : new String(resource.readAllBytes(), StandardCharsets.UTF_8).split(";", -1)) {
                if (!sql.isBlank()) {
                    statement.execute(sql);
                }
            }
            statement.execute("pragma application_id = " + APPLICATION);
            statement.execute("pragma user_version = " + VERSION);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        try (var insert = connection.prepareStatement("insert into farm (farm) values (?)")) {
            insert.setString(1, fresh.text());
            insert.executeUpdate();
        }
        connection.commit();
        connection.setAutoCommit(true);
    }

    private static Optional<FarmId> farmIn(Connection connection) throws SQLException {
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery("select farm from farm")) {
            return rows.next() ? Optional.of(new FarmId(rows.getString(1))) : Optional.empty();
        }
    }

    @Override
    public FarmId farm() {
        return farm;
    }

    @Override
    public Outcome append(Offered offered, Instant received) {
        var batch = appendAll(List.of(offered), received);
        return switch (batch) {
            case Batch.AllKept(var outcomes) -> outcomes.getFirst();
            case Batch.NoneKept(var why) -> new Outcome.Refused(why.getFirst());
        };
    }

    @Override
    public Batch appendAll(List<Offered> offered, Instant received) {
        lock.lock();
        try {
            connection.setAutoCommit(false);
            var outcomes = new ArrayList<Outcome>();
            var refusals = new ArrayList<Refusal>();
            for (var one : offered) {
                switch (offer(one, received)) {
                    case Outcome.Refused(var why) -> refusals.add(why);
                    case Outcome outcome -> outcomes.add(outcome);
                }
            }
            if (refusals.isEmpty()) {
                connection.commit();
                return new Batch.AllKept(outcomes);
            }
            connection.rollback();
            return new Batch.NoneKept(refusals);
        } catch (SQLException full) {
            rollback();
            return new Batch.NoneKept(List.of(new Refusal.NotSaved(reason(full))));
        } finally {
            restoreAutoCommit();
            lock.unlock();
        }
    }

    /**
     * Brings in entries that were received elsewhere, each with its own time of receipt: a simulated season, another
     * book. All or none.
     */
    public Batch bringIn(List<Kept> entries) {
        lock.lock();
        try {
            connection.setAutoCommit(false);
            var outcomes = new ArrayList<Outcome>();
            var refusals = new ArrayList<Refusal>();
            for (var kept : entries) {
                var offered = new Offered(kept.entry(), EntryCodec.write(kept.entry()), kept.clockOffset());
                switch (offer(offered, kept.received())) {
                    case Outcome.Refused(var why) -> refusals.add(why);
                    case Outcome outcome -> outcomes.add(outcome);
                }
            }
            if (refusals.isEmpty()) {
                connection.commit();
                return new Batch.AllKept(outcomes);
            }
            connection.rollback();
            return new Batch.NoneKept(refusals);
        } catch (SQLException full) {
            rollback();
            return new Batch.NoneKept(List.of(new Refusal.NotSaved(reason(full))));
        } finally {
            restoreAutoCommit();
            lock.unlock();
        }
    }

    private static String reason(SQLException why) {
        var text = String.valueOf(why.getMessage()).toLowerCase(Locale.ROOT);
        if (text.contains("full")) {
            return "the disk is full";
        }
        return text.contains("readonly") ? "the folder cannot be written" : String.valueOf(why.getMessage());
    }

    private void rollback() {
        try {
            connection.rollback();
        } catch (SQLException gone) {
            // The transaction ended with the fault that is being reported.
            return;
        }
    }

    private void restoreAutoCommit() {
        try {
            connection.setAutoCommit(true);
        } catch (SQLException gone) {
            throw new StoreFault("The book was lost while writing. Start the program again.", gone);
        }
    }

    private Outcome offer(Offered offered, Instant received) throws SQLException {
        var entry = offered.entry();
        if (!entry.farm().equals(farm)) {
            return new Outcome.Refused(new Refusal.OtherFarm(farm, entry.farm()));
        }
        var known = find(entry.id().toString());
        if (known.isPresent()) {
            return known.get().entry().isSameAs(entry)
                    ? new Outcome.KeptBefore(known.get())
                    : new Outcome.Refused(new Refusal.OtherContent(known.get().entry(), entry));
        }
        try (var insert = connection.prepareStatement("""
                insert into entry (farm, id, kind, received_at, clock_offset_ms, written, digest)
                values (?, ?, ?, ?, ?, ?, ?)
                """)) {
            insert.setString(1, farm.text());
            insert.setString(2, entry.id().toString());
            insert.setString(3, entry.payload().kindWord());
            insert.setString(4, received.toString());
            insert.setLong(5, offered.clockOffset().toMillis());
            insert.setString(6, offered.written());
            insert.setString(7, digest(offered.written()));
            insert.executeUpdate();
        }
        return new Outcome.Added(new Kept(entry, received, offered.clockOffset()));
    }

    /** SHA-256 of the text as kept, in hex. */
    static String digest(String written) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(written.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }

    private Optional<Kept> find(String id) throws SQLException {
        try (var select = connection.prepareStatement(
                "select received_at, clock_offset_ms, written from entry where farm = ? and id = ?")) {
            select.setString(1, farm.text());
            select.setString(2, id);
            try (var rows = select.executeQuery()) {
                return rows.next() ? Optional.of(kept(rows)) : Optional.empty();
            }
        }
    }

    private static Kept kept(ResultSet rows) throws SQLException {
        var written = rows.getString(3);
        return switch (EntryCodec.read(written)) {
            case ReadEntry.Whole(var entry) ->
                new Kept(entry, Instant.parse(rows.getString(1)), Duration.ofMillis(rows.getLong(2)));
            case ReadEntry.Malformed(var reason) ->
                throw new StoreFault(
                        "An entry in the book cannot be read: " + reason + " Run verify to find all such entries.");
        };
    }

    @Override
    public List<Kept> all() {
        return after(0);
    }

    @Override
    public List<Kept> after(long count) {
        var found = new ArrayList<Kept>();
        each(count, (kept, written) -> found.add(kept));
        return found;
    }

    @Override
    public void eachWritten(BiConsumer<Kept, String> reader) {
        each(0, reader);
    }

    private void each(long after, BiConsumer<Kept, String> reader) {
        lock.lock();
        try (var select = connection.prepareStatement("""
                select received_at, clock_offset_ms, written
                from entry
                where farm = ?
                order by seq
                limit -1 offset ?
                """)) {
            select.setString(1, farm.text());
            select.setLong(2, after);
            read(select, reader);
        } catch (SQLException broken) {
            throw new StoreFault("The book could not be read (" + broken.getMessage() + ").", broken);
        } finally {
            lock.unlock();
        }
    }

    private static void read(PreparedStatement select, BiConsumer<Kept, String> reader) throws SQLException {
        try (var rows = select.executeQuery()) {
            while (rows.next()) {
                reader.accept(kept(rows), rows.getString(3));
            }
        }
    }

    @Override
    public long count() {
        lock.lock();
        try {
            return number(connection, "select count(*) from entry");
        } catch (SQLException broken) {
            throw new StoreFault("The book could not be counted (" + broken.getMessage() + ").", broken);
        } finally {
            lock.unlock();
        }
    }

    /** Writes the whole book to one file, while it may be in use. */
    void copyTo(Path file) {
        lock.lock();
        try (var statement = connection.createStatement();
                var copy = connection.prepareStatement("vacuum into ?")) {
            // A reader may not write its own book; the copy is another file.
            statement.execute("pragma query_only = off");
            copy.setString(1, file.toString());
            copy.execute();
        } catch (SQLException refused) {
            throw new StoreFault(
                    "The backup " + file + " could not be written (" + refused.getMessage()
                            + "). The book is as it was. Choose another place.",
                    refused);
        } finally {
            lock.unlock();
        }
    }

    /** What SQLite itself says of the file; "ok" where it is whole. */
    String integrity() {
        lock.lock();
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery("pragma integrity_check")) {
            return rows.getString(1);
        } catch (SQLException broken) {
            return String.valueOf(broken.getMessage());
        } finally {
            lock.unlock();
        }
    }

    /** Each entry's id, text and the digest kept when it was received. */
    void eachDigest(DigestReader reader) {
        lock.lock();
        try (var select = connection.prepareStatement("select id, kind, written, digest from entry order by seq");
                var rows = select.executeQuery()) {
            while (rows.next()) {
                reader.take(rows.getString(1), rows.getString(2), rows.getString(3), rows.getString(4));
            }
        } catch (SQLException broken) {
            throw new StoreFault("The book could not be read (" + broken.getMessage() + ").", broken);
        } finally {
            lock.unlock();
        }
    }

    /** Takes one entry as it lies in the file. */
    interface DigestReader {
        void take(String id, String kind, String written, String digest);
    }

    @Override
    public void close() {
        lock.lock();
        try {
            connection.close();
            release.release();
        } catch (SQLException | IOException gone) {
            throw new StoreFault("The book could not be closed cleanly; what was acknowledged is kept.", gone);
        } finally {
            lock.unlock();
        }
    }
}
