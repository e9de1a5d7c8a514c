package eggwright.store;

import eggwright.store.StoreFault.Why;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;

/** Copies of the book, proved whole by reading them again. */
public final class Backups {
    private Backups() {}

    /**
     * Writes the book to one file, while it may be in use, and proves the copy equal. The copy carries a manifest of what
     * it holds. Entries received while this runs may or may not be in it.
     *
     * @throws StoreFault if the file is there already, cannot be written, or does not prove equal
     */
    public static Verified backUp(SqliteEntryStore store, Path file) {
        if (Files.exists(file)) {
            throw new StoreFault(Why.IN_THE_WAY, file + " is there already. Nothing was written. Choose another name.");
        }
        try {
            var unfinished = FreshBook.unfinished(file);
            try {
                var copy = copy(store, unfinished);
                FreshBook.finish(unfinished, file);
                return copy;
            } finally {
                Files.deleteIfExists(unfinished);
            }
        } catch (IOException refused) {
            throw notWritten(file, Reasons.of(refused), refused);
        } catch (SQLException refused) {
            throw notWritten(file, Reasons.of(refused), refused);
        }
    }

    private static StoreFault notWritten(Path file, String reason, Exception cause) {
        return new StoreFault(
                Why.NOT_WRITABLE,
                "The backup " + file + " could not be written (" + reason
                        + "). The book is as it was. Choose another place.",
                cause);
    }

    private static Verified copy(SqliteEntryStore store, Path file) throws SQLException {
        store.readers().ask(connection -> {
            try (var vacuum = connection.prepareStatement("vacuum into ?")) {
                vacuum.setString(1, file.toString());
                return vacuum.execute();
            }
        });
        var copied = verifyFile(file);
        try (var connection = Connections.making(file)) {
            Manifest.of(copied).write(connection, store.farm().text());
        }
        var copy = verifyFile(file);
        if (!copy.isWhole()
                || !copy.digest().equals(Verifying.verify(store, copy.entries()).digest())) {
            throw new StoreFault(
                    Why.DAMAGED,
                    "The copy is not equal to the book, and was removed. "
                            + (copy.isWhole() ? "" : copy.faults().getFirst() + " ")
                            + "Run verify on the book, or try another place.");
        }
        return copy;
    }

    /**
     * Puts a backup into a folder without a book, never over one, and proves it equal. No device is in: those that the backup
     * knows are let go, since it cannot know which were since.
     *
     * @throws StoreFault if the folder has a book, or the backup is not whole
     */
    public static Verified restore(Path backup, DataFolder folder) {
        if (!Files.isRegularFile(backup)) {
            throw new StoreFault(Why.NO_BOOK, "There is no backup at " + backup + ". Nothing was changed.");
        }
        refuseBook(folder);
        var was = verifyFile(backup);
        if (!was.isWhole()) {
            throw new StoreFault(
                    Why.DAMAGED,
                    "The backup " + backup + " is not whole: " + was.faults().getFirst()
                            + " Nothing was restored. Take an earlier backup.");
        }
        try {
            Files.createDirectories(folder.path());
            var lock = WriterLock.of(folder.path());
            try {
                refuseBook(folder);
                return copyBack(backup, folder, was);
            } finally {
                lock.letGo();
            }
        } catch (IOException refused) {
            throw folder.notWritable(refused);
        }
    }

    private static Verified copyBack(Path backup, DataFolder folder, Verified was) throws IOException {
        var unfinished = FreshBook.unfinished(folder.book());
        try {
            Files.copy(backup, unfinished);
            try (var connection = Connections.making(unfinished)) {
                Manifest.remove(connection);
                RestoredDevices.letGo(connection, Instant.now());
            } catch (SQLException refused) {
                throw folder.notWritable(new IOException(Reasons.of(refused), refused));
            }
            var now = verifyFile(unfinished);
            if (!now.isWhole() || !now.digest().equals(was.digest())) {
                throw new StoreFault(
                        Why.DAMAGED,
                        "What was written is not equal to the backup, and was removed. Try another folder or disk.");
            }
            FreshBook.finish(unfinished, folder.book());
            return now;
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    private static void refuseBook(DataFolder folder) {
        if (folder.hasBook()) {
            throw new StoreFault(
                    Why.IN_THE_WAY,
                    "There is a book in " + folder.path()
                            + " already. Nothing was changed. Restore into an empty folder.");
        }
    }

    /**
     * Verifies a backup, or any file that holds a book.
     *
     * @throws StoreFault if it cannot be opened as a book
     */
    public static Verified verifyFile(Path file) {
        try (var store = DataFolder.reading(file)) {
            return verify(store);
        }
    }

    /**
     * Reads every entry: file whole, digests right, every entry readable and filed rightly, none missing or twice, and as
     * the manifest says where there is one.
     */
    public static Verified verify(SqliteEntryStore store) {
        return Verifying.verify(store, Long.MAX_VALUE);
    }
}
