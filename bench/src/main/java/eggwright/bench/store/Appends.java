package eggwright.bench.store;

import eggwright.book.entry.Kept;
import eggwright.book.store.Offered;
import eggwright.book.store.Outcome;
import eggwright.invented.BigBook;
import eggwright.store.DataFolder;
import eggwright.store.SqliteEntryStore;
import eggwright.wire.EntryCodec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.sqlite.SQLiteConfig;

/**
 * Acknowledged appends beside bare commits of one row of the same text, turn by turn on the same disk with the same
 * settings (write-ahead log, synchronous=FULL); aim: 70 % or more. Not JMH, for what is timed waits for the disk.
 *
 * <p>Words: how many of each, and a folder on the disk to be measured.
 */
public final class Appends {
    private static final int AT_FIRST = 200;

    private Appends() {}

    public static void main(String[] words) throws IOException, SQLException {
        int count = words.length > 0 ? Integer.parseInt(words[0]) : 3000;
        var folder = Files.createTempDirectory(
                words.length > 1 ? Path.of(words[1]) : Path.of(System.getProperty("java.io.tmpdir")),
                "eggwright-bench");
        try {
            measure(folder, BigBook.of(count, 1));
        } finally {
            remove(folder);
        }
    }

    private static void measure(Path folder, List<Kept> book) throws SQLException {
        var ours = new long[book.size()];
        var bare = new long[book.size()];
        try (var store = DataFolder.at(folder.resolve("book"))
                        .write(book.getFirst().entry().farm());
                var connection = connection(folder.resolve("bare.sqlite"));
                var insert = connection.prepareStatement("insert into line (id, written) values (?, ?)")) {
            for (int i = 0; i < book.size(); i++) {
                var kept = book.get(i);
                var written = EntryCodec.write(kept.entry());
                // Whoever goes first in one turn goes second in the next.
                if (i % 2 == 0) {
                    ours[i] = append(store, kept, written);
                    bare[i] = commit(insert, i, written);
                } else {
                    bare[i] = commit(insert, i, written);
                    ours[i] = append(store, kept, written);
                }
            }
        }
        say("the first " + AT_FIRST, Arrays.copyOf(ours, AT_FIRST), Arrays.copyOf(bare, AT_FIRST));
        say(
                "the rest, " + (book.size() - AT_FIRST),
                Arrays.copyOfRange(ours, AT_FIRST, ours.length),
                Arrays.copyOfRange(bare, AT_FIRST, bare.length));
    }

    private static long append(SqliteEntryStore store, Kept kept, String written) {
        long begun = System.nanoTime();
        var outcome = store.append(new Offered(kept.entry(), written, kept.clockOffset()), kept.received());
        long took = System.nanoTime() - begun;
        if (!(outcome instanceof Outcome.Added)) {
            throw new IllegalStateException("Not kept: " + outcome);
        }
        return took;
    }

    private static long commit(PreparedStatement insert, int id, String written) throws SQLException {
        long begun = System.nanoTime();
        insert.setInt(1, id);
        insert.setString(2, written);
        insert.executeUpdate();
        return System.nanoTime() - begun;
    }

    private static Connection connection(Path file) throws SQLException {
        var config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        var connection = config.createConnection("jdbc:sqlite:" + file);
        try (var statement = connection.createStatement()) {
            statement.execute("create table line (id integer primary key, written text not null)");
        }
        return connection;
    }

    private static void say(String which, long[] ours, long[] bare) {
        double append = median(ours);
        double commit = median(bare);
        System.out.printf(
                "%s: append median %.0f us, bare commit %.0f us: %.0f %% of bare commits%n",
                which, append / 1e3, commit / 1e3, 100 * commit / append);
    }

    private static double median(long[] nanos) {
        var sorted = nanos.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static void remove(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
