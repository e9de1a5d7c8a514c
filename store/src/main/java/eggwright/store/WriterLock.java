package eggwright.store;

import eggwright.store.StoreFault.Why;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * Holds a folder for one writer. The lock is the operating system's, so that it falls with the process; the file says who
 * holds it and since when.
 */
final class WriterLock {
    private static final String NAME = "writer.lock";

    private final FileChannel channel;

    private WriterLock(FileChannel channel) {
        this.channel = channel;
    }

    /** @throws StoreFault if another writer holds the folder */
    static WriterLock of(Path folder) throws IOException {
        var file = folder.resolve(NAME);
        var channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            if (tryLock(channel) == null) {
                throw taken(folder, file);
            }
            var holder = "process " + ProcessHandle.current().pid() + " since "
                    + Instant.now().truncatedTo(ChronoUnit.SECONDS) + "\n";
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(holder.getBytes(StandardCharsets.UTF_8)), 0);
            return new WriterLock(channel);
        } catch (IOException | RuntimeException fault) {
            channel.close();
            throw fault;
        }
    }

    private static @org.jspecify.annotations.Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException heldByThisProcess) {
            return null;
        }
    }

    private static StoreFault taken(Path folder, Path file) throws IOException {
        var holder = Files.readString(file).strip();
        return new StoreFault(
                Why.OTHER_WRITER,
                "Another Eggwright is writing the book in " + folder + (holder.isEmpty() ? "" : " (" + holder + ")")
                        + ". Nothing was changed. Use the desk that is open, or stop it first.");
    }

    /** Lets the next writer in. */
    void letGo() {
        try {
            channel.truncate(0);
            channel.close();
        } catch (IOException gone) {
            throw new StoreFault(
                    Why.NOT_WRITABLE, "The folder's lock could not be let go. What was acknowledged is kept.", gone);
        }
    }
}
