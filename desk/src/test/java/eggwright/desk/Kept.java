package eggwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares what a page draws with the file kept beside the tests. When a kept value moves, find out why, then keep the
 * new one with {@code -Deggwright.keep=write} and say why in the commit.
 */
public final class Kept {
    private static final Path ROOT = Path.of("src/test/resources/eggwright/desk");

    private Kept() {}

    /** A whole page; the hashes in the names of its assets are left out, so that a change of style moves no page. */
    public static void samePage(String name, String html) {
        same(name, html.replaceAll("(/assets/[\\w/-]+)\\.[0-9a-f]{10}\\.", "$1.HASH."));
    }

    public static void same(String name, String actual) {
        var file = ROOT.resolve(name);
        try {
            if ("write".equals(System.getProperty("eggwright.keep"))) {
                Files.createDirectories(file.getParent());
                Files.writeString(file, actual);
            }
            assertEquals(Files.readString(file), actual, name);
        } catch (IOException e) {
            throw new UncheckedIOException(name + " is not kept yet", e);
        }
    }
}
