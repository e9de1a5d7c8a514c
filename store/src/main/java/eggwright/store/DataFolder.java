package eggwright.store;

import eggwright.book.name.FarmId;
import eggwright.store.StoreFault.Why;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.UUID;

/**
 * The folder that holds a farm's book. One writer at a time, held off by a lock on a file beside the book; readers run
 * beside it.
 */
public final class DataFolder {
    static final String BOOK = "book.sqlite";

    private final Path folder;

    private DataFolder(Path folder) {
        this.folder = folder;
    }

    public static DataFolder at(Path folder) {
        return new DataFolder(folder.toAbsolutePath().normalize());
    }

    public Path path() {
        return folder;
    }

    public boolean hasBook() {
        return Files.exists(book());
    }

    /** What a day sheet needs of the book, worked out before; see {@link Aside}. */
    public Aside today() {
        return new Aside(folder.resolve("today.aside"));
    }

    Path book() {
        return folder.resolve(BOOK);
    }

    /**
     * Opens the book for reading beside whoever writes. What is appended to it answers that it was not saved.
     *
     * @throws StoreFault if there is no book, it is of another version, or it is damaged
     */
    public SqliteEntryStore read() {
        checkBook();
        return reading(book());
    }

    /**
     * How far the book goes: quicker than opening it, for whoever needs no more of it.
     *
     * @throws StoreFault as {@link #read()}
     */
    public Head head() {
        checkBook();
        checkVersion(book());
        try (var connection = Connections.reading(book())) {
            return EntryRows.head(connection, farm(book(), connection), Long.MAX_VALUE);
        } catch (SQLException notThisWay) {
            // Such as on a write-protected stick.
            try (var store = read()) {
                return store.head();
            }
        }
    }

    private void checkBook() {
        if (!hasBook()) {
            throw new StoreFault(
                    Why.NO_BOOK,
                    "There is no book in " + folder
                            + ". Nothing was changed. Name the farm's folder with --data, or begin one with serve or import.");
        }
    }

    private static void checkVersion(Path file) {
        int version = BookFile.version(file);
        if (version < Migrations.OLDEST_READ) {
            throw new StoreFault(
                    Why.OLDER_BOOK,
                    file + " was made by an older Eggwright (version " + version
                            + "). Nothing was changed. Start serve on its folder once, which brings it up.");
        }
    }

    static SqliteEntryStore reading(Path file) {
        checkVersion(file);
        try {
            return reading(file, Readers.beside(file), Connections.reading(file));
        } catch (SQLException fault) {
            return readingStill(file, fault);
        }
    }

    /** From a place where nothing can be made, such as a write-protected stick, provided no log lies beside the file. */
    private static SqliteEntryStore readingStill(Path file, SQLException first) {
        try {
            if (!BookFile.hasLog(file) && !Files.isWritable(file.resolveSibling("."))) {
                return reading(file, Readers.ofStillFile(file), Connections.readingStill(file));
            }
        } catch (SQLException | IOException second) {
            first.addSuppressed(second);
        }
        throw unreadable(file, first);
    }

    private static SqliteEntryStore reading(Path file, Readers readers, Connection connection) throws SQLException {
        try {
            return new SqliteEntryStore(file, farm(file, connection), new Writer(connection), readers, () -> {});
        } catch (SQLException | RuntimeException fault) {
            connection.close();
            throw fault;
        }
    }

    /**
     * Opens the book for writing; makes folder and book where there are none.
     *
     * @throws StoreFault if another program writes here, the folder cannot be written, or the book is of a newer version
     */
    public SqliteEntryStore write() {
        return write(new FarmId("farm-" + UUID.randomUUID().toString().substring(0, 8)));
    }

    /**
     * The same, with the name that a fresh book gives its farm.
     *
     * @throws StoreFault as {@link #write()}
     */
    public SqliteEntryStore write(FarmId fresh) {
        if (hasBook()) {
            BookFile.version(book());
        }
        try {
            Files.createDirectories(folder);
            var lock = WriterLock.of(folder);
            try {
                if (!hasBook()) {
                    FreshBook.make(book(), fresh);
                }
                return writing(lock);
            } catch (IOException | RuntimeException fault) {
                lock.letGo();
                throw fault;
            }
        } catch (IOException refused) {
            throw notWritable(refused);
        }
    }

    private SqliteEntryStore writing(WriterLock lock) {
        int version = BookFile.version(book());
        try {
            var connection = Connections.writing(book());
            try {
                Migrations.apply(connection, version);
                return new SqliteEntryStore(
                        book(), farm(book(), connection), new Writer(connection), Readers.beside(book()), lock::letGo);
            } catch (SQLException | RuntimeException fault) {
                connection.close();
                throw fault;
            }
        } catch (SQLException fault) {
            throw unreadable(book(), fault);
        }
    }

    StoreFault notWritable(IOException refused) {
        return new StoreFault(
                Why.NOT_WRITABLE,
                "The folder " + folder + " cannot be written (" + Reasons.of(refused)
                        + "). Nothing was changed. Name another with --data, or give leave to write there.",
                refused);
    }

    private static FarmId farm(Path file, Connection connection) throws SQLException {
        try (var select = connection.createStatement();
                var rows = select.executeQuery("select farm from farm")) {
            if (rows.next()) {
                return new FarmId(rows.getString(1));
            }
        }
        throw new StoreFault(
                Why.DAMAGED,
                file
                        + " names no farm. Nothing was changed. Keep it, and restore the last backup into an empty folder.");
    }

    private static StoreFault unreadable(Path file, SQLException fault) {
        return new StoreFault(
                Why.DAMAGED,
                file + " could not be opened (" + Reasons.of(fault)
                        + "). Nothing was changed. Keep it, and restore the last backup into an empty folder.",
                fault);
    }
}
