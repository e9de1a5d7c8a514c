package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.store.DataFolder;
import eggwright.store.SqliteEntryStore;
import eggwright.store.StoreFault;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * Keeps what {@code today} needs up to date while the desk is open: a moment after the last of several entries, beside
 * the pages' work and never before it.
 */
final class TodayKeeper {
    private static final Duration A_MOMENT = Duration.ofSeconds(2);

    private final DataFolder data;
    private final SqliteEntryStore store;
    /** The last picture that was shown, until it is kept. */
    private final BlockingQueue<Picture> shown = new ArrayBlockingQueue<>(1);

    TodayKeeper(DataFolder data, SqliteEntryStore store) {
        this.data = data;
        this.store = store;
        Thread.ofPlatform().daemon().name("today-keeper").start(this::keep);
    }

    /** Shown by one thread at a time. */
    void look(Picture picture) {
        shown.poll();
        shown.add(picture);
    }

    private static long untilItReadsOtherwise(TodayAside aside) {
        var left = Duration.between(Instant.now(), aside.textUntil()).toSeconds();
        return Math.clamp(left, 0, Duration.ofDays(1).toSeconds()) + A_MOMENT.toSeconds();
    }

    private void keep() {
        try {
            var picture = shown.take();
            while (true) {
                Thread.sleep(A_MOMENT);
                var later = shown.poll();
                picture = later == null ? picture : later;
                var aside = TodayAside.of(picture, Instant.now());
                aside.keep(data, store.head(picture.entryCount()));
                var next = shown.poll(untilItReadsOtherwise(aside), TimeUnit.SECONDS);
                picture = next == null ? picture : next;
            }
        } catch (InterruptedException | StoreFault closing) {
            // The desk is closing, or the book cannot be read: today then reads the book itself.
        }
    }
}
