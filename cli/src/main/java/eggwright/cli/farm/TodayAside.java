package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.Picture;
import eggwright.store.DataFolder;
import eggwright.store.Head;
import eggwright.store.SqliteEntryStore;
import eggwright.store.StoreFault;
import eggwright.today.AbridgedPicture;
import eggwright.wire.PictureBytes;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;

/**
 * What {@code today} worked out from a book, kept beside it, since reading and folding a season takes longer than a
 * person at a door waits: how the day sheet reads, hour after hour, for some days; and what of the picture later day
 * sheets can still ask for. Whoever has just worked it out, or written to the book, keeps it; of a book that has grown
 * since nothing kept is used.
 */
final class TodayAside {
    /** For how long whoever writes to the book leaves readings behind: a week, until the next set. */
    private static final Duration LEFT_BEHIND = Duration.ofDays(8);

    /** The same for {@code today} itself, whose person waits. */
    private static final Duration WORKED_OUT_WHILE_WAITING = Duration.ofDays(2);

    /** Set by the start script, another for each build; without it nothing is kept. */
    private static final String BUILD = "eggwright.build";

    private final TodayBytes bytes;

    private TodayAside(TodayBytes bytes) {
        this.bytes = bytes;
    }

    /** What was kept of this very book by this very build. */
    static Optional<TodayAside> find(DataFolder data, Head head) {
        var build = build();
        return build.isEmpty()
                ? Optional.empty()
                : data.today().find(build, head).flatMap(TodayBytes::read).map(TodayAside::new);
    }

    private static String build() {
        return System.getProperty(BUILD, "");
    }

    /** The sheet for people, where it was kept for this moment. */
    Optional<String> text(Instant now) {
        return holds() ? bytes.text(now) : Optional.empty();
    }

    /** The answer for other programs, where it was kept for this moment. */
    Optional<String> json(Instant now) {
        return holds()
                ? bytes.afterItsHour(now).map(rest -> TodayReading.itsHour(now, bytes.zone()) + rest)
                : Optional.empty();
    }

    /** A clock that the farm has not noted may be another next time. */
    private boolean holds() {
        return switch (bytes.clock()) {
            case NOTED -> true;
            case OF_THE_MACHINE -> bytes.zone().equals(ZoneId.systemDefault());
        };
    }

    /** The picture for a day sheet of this moment; empty where the clock was set back, or the bytes cannot be read. */
    Optional<Picture> picture(Instant now) {
        try {
            return now.isBefore(bytes.from()) ? Optional.empty() : Optional.of(PictureBytes.read(bytes.picture()));
        } catch (RuntimeException unreadable) {
            // Worked out again, as if it had not been kept.
            return Optional.empty();
        }
    }

    /** Keeps what was just worked out from a whole picture, or from an abridged one. */
    static void keep(DataFolder data, Head head, Picture picture, Instant now) {
        keep(data, head, picture, now, WORKED_OUT_WHILE_WAITING);
    }

    /** Keeps what {@code today} will be asked in the days after this picture. */
    static void leave(DataFolder data, Head head, Picture picture, Instant now) {
        keep(data, head, picture, now, LEFT_BEHIND);
    }

    /**
     * Leaves behind what {@code today} will be asked of a book that was just written to; the answer of the command is
     * given before.
     */
    static void leave(FarmCommand command, DataFolder data, SqliteEntryStore store) {
        if (build().isEmpty()) {
            return;
        }
        command.out().flush();
        try {
            var picture = Ledger.of(store.all()).picture();
            leave(data, store.head(picture.entryCount()), picture, Instant.now());
        } catch (StoreFault unreadable) {
            // What was written is kept; today reads the book itself, and says what is wrong with it.
        }
    }

    private static void keep(DataFolder data, Head head, Picture picture, Instant now, Duration ahead) {
        var build = build();
        if (build.isEmpty()) {
            return;
        }
        var abridged = AbridgedPicture.of(picture, now).picture();
        var clock = TodayText.clock(picture);
        data.today()
                .keep(
                        build,
                        head,
                        TodayBytes.write(
                                now,
                                clock.zoneNoted().isPresent()
                                        ? TodayBytes.Clock.NOTED
                                        : TodayBytes.Clock.OF_THE_MACHINE,
                                TodayText.zone(clock),
                                TodayReading.of(abridged, now, ahead),
                                PictureBytes.write(abridged)));
    }
}
