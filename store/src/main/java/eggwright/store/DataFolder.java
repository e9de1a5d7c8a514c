package eggwright.store;

import eggwright.book.name.FarmId;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * The folder that holds a farm's book. One writer at a time, held off by a lock on a file beside the book; readers run
 * beside it.
 */
public final class DataFolder {
    static final String BOOK = "book.sqlite";
    private static final String LOCK = "writer.lock";

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
        return Files.isRegularFile(folder.resolve(BOOK));
    }

    /**
     * Opens the book for reading beside whoever writes.
     *
     * @throws StoreFault if there is no book, or it is of a newer version
     */
    public SqliteEntryStore read() {
        if (!hasBook()) {
            throw new StoreFault("There is no book in " + folder
                    + ". Nothing was changed. Name the farm's folder with --data, or begin one with serve or import.");
        }
        return SqliteEntryStore.reading(folder.resolve(BOOK));
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
        try {
            Files.createDirectories(folder);
            var channel = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            var lock = lock(channel);
            try {
                return SqliteEntryStore.writing(folder.resolve(BOOK), fresh, () -> {
                    lock.release();
                    channel.close();
                });
            } catch (StoreFault fault) {
                channel.close();
                throw fault;
            }
        } catch (IOException refused) {
            throw new StoreFault(
                    "The folder " + folder + " cannot be written (" + refused.getMessage()
                            + "). Nothing was changed. Name another with --data, or give leave to write there.",
                    refused);
        }
    }

    private FileLock lock(FileChannel channel) throws IOException {
        try {
            var lock = channel.tryLock();
            if (lock != null) {
                return lock;
            }
        } catch (OverlappingFileLockException here) {
            channel.close();
            throw new StoreFault(taken(), here);
        }
        channel.close();
        throw new StoreFault(taken());
    }

    private String taken() {
        return "Another Eggwright is writing the book in " + folder
                + ". Nothing was changed. Use the desk that is open, or stop it first.";
    }
}
