package eggwright.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.SQLiteConfig;

/** Opens the file of a book with the settings that its promises rest on. */
final class Connections {
    private static final int BUSY_MILLIS = 10_000;

    private Connections() {}

    /** For the one writer: an acknowledged commit is on the disk, and what is erased is overwritten. */
    static Connection writing(Path file) throws SQLException {
        var config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLIS);
        config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true");
        return config.createConnection(url(file, ""));
    }

    /** For a file that nobody else has open yet; leaves no log beside it. */
    static Connection making(Path file) throws SQLException {
        var config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.DELETE);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        return config.createConnection(url(file, ""));
    }

    /** Beside the writer; cannot write. */
    static Connection reading(Path file) throws SQLException {
        return reading(file, "");
    }

    /** Of a file that nobody writes, in a folder where nothing can be made beside it. */
    static Connection readingStill(Path file) throws SQLException {
        return reading(file, "?immutable=1");
    }

    private static Connection reading(Path file, String how) throws SQLException {
        var config = new SQLiteConfig();
        config.setReadOnly(true);
        config.setBusyTimeout(BUSY_MILLIS);
        return config.createConnection(url(file, how));
    }

    /** As a URI, so that a folder may have a question mark in its name. */
    private static String url(Path file, String how) {
        return "jdbc:sqlite:" + file.toAbsolutePath().toUri() + how;
    }
}
