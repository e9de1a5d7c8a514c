package eggwright.store;

import eggwright.wire.EntryCodec;
import eggwright.wire.ReadEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.TreeMap;

/** Copies of the book, proved whole by reading them again. */
public final class Backups {
    private Backups() {}

    /**
     * Writes the book to one file and proves the copy equal.
     *
     * @throws StoreFault if the file is there already, cannot be written, or does not prove equal
     */
    public static Verified backUp(SqliteEntryStore store, Path file) {
        if (Files.exists(file)) {
            throw new StoreFault(file + " is there already. Nothing was written. Choose another name.");
        }
        store.copyTo(file);
        var copy = verifyFile(file);
        if (!copy.isWhole() || !copy.digest().equals(verify(store).digest())) {
            throw new StoreFault(
                    "The copy " + file + " is not equal to the book. Do not rely on it; try another place.");
        }
        return copy;
    }

    /**
     * Puts a backup into an empty folder, never over a book, and proves it equal.
     *
     * @throws StoreFault if the folder has a book, or the backup is not whole
     */
    public static Verified restore(Path backup, DataFolder folder) {
        if (folder.hasBook()) {
            throw new StoreFault("There is a book in " + folder.path()
                    + " already. Nothing was changed. Restore into an empty folder.");
        }
        if (!Files.isRegularFile(backup)) {
            throw new StoreFault("There is no backup at " + backup + ". Nothing was changed.");
        }
        var was = verifyFile(backup);
        if (!was.isWhole()) {
            throw new StoreFault(
                    "The backup " + backup + " is not whole: " + was.faults().getFirst() + " Nothing was restored.");
        }
        try {
            Files.createDirectories(folder.path());
            Files.copy(backup, folder.path().resolve(DataFolder.BOOK));
        } catch (IOException refused) {
            throw new StoreFault(
                    "The folder " + folder.path() + " cannot be written (" + refused.getMessage() + ").", refused);
        }
        try (var store = folder.read()) {
            var now = verify(store);
            if (!now.digest().equals(was.digest())) {
                throw new StoreFault("The restored book is not equal to the backup. Try again into another folder.");
            }
            return now;
        }
    }

    private static Verified verifyFile(Path file) {
        try (var store = SqliteEntryStore.reading(file)) {
            return verify(store);
        }
    }

    /** Reads every entry: file whole, digests right, every entry readable. */
    public static Verified verify(SqliteEntryStore store) {
        var faults = new ArrayList<String>();
        var integrity = store.integrity();
        if (!integrity.equals("ok")) {
            faults.add("The file is damaged: " + integrity + ".");
        }
        var byKind = new TreeMap<String, Long>();
        var rolling = new String[] {""};
        var count = new long[1];
        store.eachDigest((id, kind, written, digest) -> {
            count[0]++;
            byKind.merge(kind, 1L, Long::sum);
            rolling[0] = SqliteEntryStore.digest(rolling[0] + digest);
            if (!SqliteEntryStore.digest(written).equals(digest)) {
                faults.add("Entry " + id + " is not as it was received.");
            }
            if (EntryCodec.read(written) instanceof ReadEntry.Malformed(var reason)) {
                faults.add("Entry " + id + " cannot be read: " + reason);
            }
        });
        return new Verified(count[0], byKind, rolling[0], faults);
    }
}
