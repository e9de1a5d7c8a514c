package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.Picture;
import eggwright.store.DataFolder;
import eggwright.store.Head;
import eggwright.store.SqliteEntryStore;
import eggwright.today.AbridgedPicture;
import eggwright.wire.PictureBytes;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.Optional;

/**
 * What a day sheet needs of a book, kept beside it, since reading and folding a season takes longer than a person at a
 * door waits. Whoever has just worked it out keeps it; a book that has grown since is read and folded whole.
 */
final class TodayAside {
    /** Set by the start script, another for each build; without it nothing is kept. */
    private static final String BUILD = "eggwright.build";

    private TodayAside() {}

    /** The picture for a day sheet of now or later. */
    static Picture picture(DataFolder data, SqliteEntryStore store, Instant now) {
        var head = store.head();
        var kept = find(data, head).filter(k -> !k.from().isAfter(now)).map(AbridgedPicture::picture);
        if (kept.isPresent()) {
            return kept.get();
        }
        var whole = Ledger.of(store.all()).picture();
        // An entry that came while the book was read belongs to a later head.
        keep(data, whole.entryCount() == head.count() ? head : store.head(whole.entryCount()), whole, now);
        return whole;
    }

    private static Optional<AbridgedPicture> find(DataFolder data, Head head) {
        var build = System.getProperty(BUILD, "");
        return build.isEmpty()
                ? Optional.empty()
                : data.today().find(build, head).flatMap(TodayAside::read);
    }

    private static Optional<AbridgedPicture> read(byte[] bytes) {
        try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            var from = Instant.ofEpochSecond(in.readLong());
            return Optional.of(new AbridgedPicture(from, PictureBytes.read(in.readAllBytes())));
        } catch (IOException | RuntimeException unreadable) {
            // Worked out again, as if it had not been kept.
            return Optional.empty();
        }
    }

    /** Keeps what a day sheet needs of a picture. */
    static void keep(DataFolder data, Head head, Picture whole, Instant now) {
        var build = System.getProperty(BUILD, "");
        if (build.isEmpty()) {
            return;
        }
        var abridged = AbridgedPicture.of(whole, Instant.ofEpochSecond(now.getEpochSecond()));
        var bytes = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(bytes)) {
            out.writeLong(abridged.from().getEpochSecond());
            out.write(PictureBytes.write(abridged.picture()));
        } catch (IOException impossible) {
            throw new IllegalStateException("Writing to memory", impossible);
        }
        data.today().keep(build, head, bytes.toByteArray());
    }
}
