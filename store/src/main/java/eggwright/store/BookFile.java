package eggwright.store;

import eggwright.store.StoreFault.Why;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Looks at the first 100 bytes of a book before the database does, so that a file that is not ours, is newer or was cut
 * short is named and left exactly as it is. Layout: SQLite file format, section 1.3 ("The Database Header").
 */
final class BookFile {
    /** "Eggw": marks the file as a book. */
    static final int APPLICATION = 0x45676777;

    private static final int HEADER_BYTES = 100;
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int PAGE_SIZE_AT = 16;
    private static final int PAGE_COUNT_AT = 28;
    private static final int USER_VERSION_AT = 60;
    private static final int APPLICATION_AT = 68;
    private static final int LARGEST_PAGE = 65_536;

    private BookFile() {}

    /**
     * The version of a book's tables.
     *
     * @throws StoreFault if the file is not a book, is newer than this program, or was cut short
     */
    static int version(Path file) {
        var header = header(file);
        if (header.getInt(APPLICATION_AT) != APPLICATION) {
            throw new StoreFault(
                    Why.NOT_A_BOOK,
                    file + " is a database, but not a book of Eggwright. Nothing was touched. Name the farm's folder.");
        }
        int version = header.getInt(USER_VERSION_AT);
        if (version > Migrations.VERSION) {
            throw new StoreFault(
                    Why.NEWER_BOOK,
                    file + " was made by a newer Eggwright (version " + version + "; this one knows up to "
                            + Migrations.VERSION + "). Nothing was touched. Start the newer one.");
        }
        checkLength(file, header);
        return version;
    }

    private static ByteBuffer header(Path file) {
        var header = ByteBuffer.allocate(HEADER_BYTES);
        try (var channel = FileChannel.open(file, StandardOpenOption.READ)) {
            while (header.hasRemaining()) {
                if (channel.read(header) < 0) {
                    throw new EOFException();
                }
            }
        } catch (EOFException shorter) {
            throw cutShort(file, "it has " + header.position() + " bytes", shorter);
        } catch (IOException refused) {
            throw new StoreFault(
                    Why.DAMAGED, file + " cannot be read (" + Reasons.of(refused) + "). Nothing was changed.", refused);
        }
        for (int i = 0; i < MAGIC.length; i++) {
            if (header.get(i) != MAGIC[i]) {
                throw new StoreFault(
                        Why.NOT_A_BOOK,
                        file + " is not a book. Nothing was touched. Name the farm's folder or a backup.");
            }
        }
        return header;
    }

    /** While a log lies beside the file, pages may still be on their way into it. */
    private static void checkLength(Path file, ByteBuffer header) {
        try {
            int size = header.getShort(PAGE_SIZE_AT) & 0xFFFF;
            long whole = (long) (size == 1 ? LARGEST_PAGE : size) * header.getInt(PAGE_COUNT_AT);
            if (Files.size(file) < whole && !hasLog(file)) {
                throw cutShort(file, "it has " + Files.size(file) + " bytes of " + whole, null);
            }
        } catch (IOException refused) {
            throw new StoreFault(
                    Why.DAMAGED, file + " cannot be read (" + Reasons.of(refused) + "). Nothing was changed.", refused);
        }
    }

    /** Whether acknowledged entries may lie in the log beside the file. */
    static boolean hasLog(Path file) throws IOException {
        var log = file.resolveSibling(file.getFileName() + "-wal");
        return Files.exists(log) && Files.size(log) > 0;
    }

    private static StoreFault cutShort(Path file, String how, @org.jspecify.annotations.Nullable Exception cause) {
        var message = file + " was cut short: " + how
                + ". Nothing was changed. Keep it, and restore the last backup into an empty folder.";
        return cause == null ? new StoreFault(Why.DAMAGED, message) : new StoreFault(Why.DAMAGED, message, cause);
    }
}
