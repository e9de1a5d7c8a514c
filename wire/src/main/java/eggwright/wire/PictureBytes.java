package eggwright.wire;

import eggwright.book.picture.Picture;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * A picture as bytes and back, for keeping what was worked out from one start of the program to the next. Not a format:
 * only the build that wrote them can read them, they are never sent anywhere, and the book never depends on them.
 */
public final class PictureBytes {
    private PictureBytes() {}

    public static byte[] write(Picture picture) {
        var bytes = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(bytes)) {
            ValueForm.of(Picture.class).write(new ValueOut(out), picture);
        } catch (IOException impossible) {
            throw new UncheckedIOException("Writing to memory", impossible);
        }
        return bytes.toByteArray();
    }

    /**
     * The picture that was written.
     *
     * @throws UncheckedIOException or another unchecked exception if this build did not write these bytes
     */
    public static Picture read(byte[] bytes) {
        try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            var read = ValueForm.of(Picture.class).read(new ValueIn(in));
            if (read instanceof Picture picture) {
                return picture;
            }
            throw new IOException("These bytes hold no picture");
        } catch (IOException broken) {
            throw new UncheckedIOException("Reading from memory", broken);
        }
    }
}
