package eggwright.store;

import eggwright.book.name.FarmId;
import eggwright.store.StoreFault.Why;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;

/**
 * Makes a file whole under another name and then gives it its own: whoever finds a book finds all of it, wherever the
 * power went.
 */
final class FreshBook {
    private FreshBook() {}

    /** A book without entries. */
    static void make(Path file, FarmId farm) throws IOException {
        var unfinished = unfinished(file);
        try (var connection = Connections.making(unfinished)) {
            Migrations.apply(connection, 0);
            try (var insert = connection.prepareStatement("insert into farm (farm) values (?)")) {
                insert.setString(1, farm.text());
                insert.executeUpdate();
            }
        } catch (SQLException fault) {
            throw new StoreFault(
                    Why.NOT_WRITABLE,
                    "The book " + file + " could not be made (" + Reasons.of(fault)
                            + "). Nothing was kept. Make room, or name another folder with --data.",
                    fault);
        }
        finish(unfinished, file);
    }

    /** The name beside a file under which it is made; what was left there by a power cut is removed. */
    static Path unfinished(Path file) throws IOException {
        var unfinished = file.resolveSibling(file.getFileName() + ".unfinished");
        Files.deleteIfExists(unfinished);
        Files.deleteIfExists(file.resolveSibling(unfinished.getFileName() + "-journal"));
        return unfinished;
    }

    /** Puts a whole file in its place, durably. */
    static void finish(Path unfinished, Path file) throws IOException {
        try (var channel = FileChannel.open(unfinished, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
        try (var folder = FileChannel.open(file.toAbsolutePath().resolveSibling("."), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException notOffered) {
            // Some systems do not open folders; there the name is made durable with the next write.
            return;
        }
    }
}
