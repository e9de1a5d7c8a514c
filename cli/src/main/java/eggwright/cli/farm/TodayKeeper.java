package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.store.DataFolder;
import eggwright.store.SqliteEntryStore;
import eggwright.store.StoreFault;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

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

    private void keep() {
        try {
            while (true) {
                var last = shown.take();
                Thread.sleep(A_MOMENT);
                var later = shown.poll();
                var picture = later == null ? last : later;
                TodayAside.keep(data, store.head(picture.entryCount()), picture, Instant.now());
            }
        } catch (InterruptedException | StoreFault closing) {
            // The desk is closing, or the book cannot be read: today then reads the book itself.
        }
    }
}
