package eggwright.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * A file beside a book that holds something worked out from it, to be spared working it out again. It may be deleted at
 * any time. What it holds is given back only for the very book and the very build of the program that it was worked out
 * for; where it cannot be read or written, nothing is said and the work is done instead.
 */
public final class Aside {
    private static final int MAGIC = 0x45676741;
    private static final int LARGEST_BYTES = 16 << 20;

    private final Path file;

    Aside(Path file) {
        this.file = file;
    }

    /**
     * What was kept.
     *
     * @param build of this program
     * @param head of the book as it stands now
     */
    public Optional<byte[]> find(String build, Head head) {
        try {
            if (!Files.exists(file) || Files.size(file) > LARGEST_BYTES) {
                return Optional.empty();
            }
            return read(Files.readAllBytes(file), build, head);
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static Optional<byte[]> read(byte[] whole, String build, Head head) throws IOException {
        try (var in = new DataInputStream(new ByteArrayInputStream(whole))) {
            if (in.readInt() != MAGIC
                    || !in.readUTF().equals(build)
                    || !in.readUTF().equals(head.toString())) {
                return Optional.empty();
            }
            long sum = in.readLong();
            var bytes = in.readAllBytes();
            return sum(bytes) == sum ? Optional.of(bytes) : Optional.empty();
        }
    }

    /** Keeps something in the place of what was kept before, all or nothing. */
    public void keep(String build, Head head, byte[] bytes) {
        var folder = file.resolveSibling(".").normalize();
        if (!Files.isWritable(folder)) {
            return;
        }
        try {
            var fresh = folder.resolve(
                    file.getFileName() + "." + ProcessHandle.current().pid() + ".new");
            try {
                Files.write(fresh, written(build, head, bytes));
                Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(fresh);
            }
        } catch (IOException notKept) {
            // A full disk, or a folder that has gone: the next reader works it out again.
        }
    }

    private static byte[] written(String build, Head head, byte[] bytes) throws IOException {
        var whole = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(whole)) {
            out.writeInt(MAGIC);
            out.writeUTF(build);
            out.writeUTF(head.toString());
            out.writeLong(sum(bytes));
            out.write(bytes);
        }
        return whole.toByteArray();
    }

    private static long sum(byte[] bytes) {
        var sum = new CRC32();
        sum.update(bytes);
        return sum.getValue();
    }
}
