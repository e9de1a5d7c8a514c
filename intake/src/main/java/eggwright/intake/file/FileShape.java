package eggwright.intake.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/** What says whether a file is still the same, without reading it. */
public record FileShape(long bytes, long modifiedMillis) {
    public static FileShape of(BasicFileAttributes attributes) {
        return new FileShape(attributes.size(), attributes.lastModifiedTime().toMillis());
    }

    /** @throws IOException if the file is gone or does not let itself be asked */
    public static FileShape of(Path file) throws IOException {
        return of(Files.readAttributes(file, BasicFileAttributes.class));
    }

    /** Whether a file still has this shape; not where it is gone. */
    public boolean isStillOf(Path file) {
        try {
            return of(file).equals(this);
        } catch (IOException gone) {
            return false;
        }
    }

    /** To be remembered. */
    public String text() {
        return bytes + " " + modifiedMillis;
    }
}
