package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.store.DataFolder;
import eggwright.store.Head;
import eggwright.today.AbridgedPicture;
import eggwright.wire.PictureBytes;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;

/**
 * What {@code today} worked out from a book, kept beside it, since reading and folding a season takes longer than a
 * person at a door waits: what of the picture day sheets can still ask for, and the sheet's text for as long as it reads
 * the same. Whoever has just worked it out keeps it; of a book that has grown since nothing kept is used.
 *
 * @param from the abridged picture is good from this second on
 * @param textFrom from when, and until when, the text holds; the same instant where it is not to be used
 * @param pictureBytes an abridged picture
 */
record TodayAside(Instant from, Instant textFrom, Instant textUntil, String text, byte[] pictureBytes) {
    /** Set by the start script, another for each build; without it nothing is kept. */
    private static final String BUILD = "eggwright.build";

    /** What was kept of this very book by this very build. */
    static Optional<TodayAside> find(DataFolder data, Head head) {
        var build = System.getProperty(BUILD, "");
        return build.isEmpty()
                ? Optional.empty()
                : data.today().find(build, head).flatMap(TodayAside::read);
    }

    private static Optional<TodayAside> read(byte[] bytes) {
        try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            return Optional.of(new TodayAside(
                    Instant.ofEpochSecond(in.readLong()),
                    Instant.ofEpochSecond(in.readLong()),
                    Instant.ofEpochSecond(in.readLong()),
                    new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8),
                    in.readAllBytes()));
        } catch (IOException notOurs) {
            return Optional.empty();
        }
    }

    /** The sheet's text, where it holds at this moment. */
    Optional<String> text(Instant now) {
        return now.isBefore(textFrom) || !now.isBefore(textUntil) ? Optional.empty() : Optional.of(text);
    }

    /** The picture for a day sheet of this moment; empty where the clock was set back, or the bytes cannot be read. */
    Optional<Picture> picture(Instant now) {
        try {
            return now.isBefore(from) ? Optional.empty() : Optional.of(PictureBytes.read(pictureBytes));
        } catch (RuntimeException unreadable) {
            // Worked out again, as if it had not been kept.
            return Optional.empty();
        }
    }

    /** Of a whole picture. */
    static TodayAside of(Picture whole, Instant now) {
        var from = Instant.ofEpochSecond(now.getEpochSecond());
        return new TodayAside(
                        from,
                        from,
                        from,
                        "",
                        PictureBytes.write(AbridgedPicture.of(whole, from).picture()))
                .withText(whole, now);
    }

    /** With the text of another hour. A clock that the farm has not noted may be another next time. */
    TodayAside withText(Picture picture, Instant now) {
        var sheet = TodayText.sheet(picture, now);
        var start = Instant.ofEpochSecond(now.getEpochSecond());
        return new TodayAside(
                from,
                start,
                TodayText.hasZone(picture) ? sheet.readsTheSameUntil().toInstant() : start,
                TodayText.of(picture, sheet),
                pictureBytes);
    }

    void keep(DataFolder data, Head head) {
        var build = System.getProperty(BUILD, "");
        if (build.isEmpty()) {
            return;
        }
        var bytes = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(bytes)) {
            out.writeLong(from.getEpochSecond());
            out.writeLong(textFrom.getEpochSecond());
            out.writeLong(textUntil.getEpochSecond());
            var written = text.getBytes(StandardCharsets.UTF_8);
            out.writeInt(written.length);
            out.write(written);
            out.write(pictureBytes);
        } catch (IOException impossible) {
            throw new IllegalStateException("Writing to memory", impossible);
        }
        data.today().keep(build, head, bytes.toByteArray());
    }
}
