package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.store.DataFolder;
import eggwright.store.SqliteEntryStore;
import eggwright.store.StoreFault;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/**
 * Keeps what {@code today} needs up to date while the desk is open: a moment after the last of several entries, beside
 * the pages' work and never before it; and what was noted last when the desk is closed.
 */
final class TodayKeeper implements AutoCloseable {
    private static final Duration A_MOMENT = Duration.ofSeconds(2);
    private static final Duration LONGEST_CLOSING = Duration.ofSeconds(3);

    private final DataFolder data;
    private final SqliteEntryStore store;
    private final Thread thread;

    /** Rings when a picture was shown. */
    private final Semaphore bell = new Semaphore(0);

    /** Absent until one was shown. */
    private volatile @Nullable Picture shown;

    /** Set while the last picture shown is not kept. */
    private final AtomicBoolean waits = new AtomicBoolean();

    TodayKeeper(DataFolder data, SqliteEntryStore store) {
        this.data = data;
        this.store = store;
        this.thread = Thread.ofPlatform().daemon().name("today-keeper").start(this::keepOn);
    }

    /** Shown by one thread at a time. */
    void look(Picture picture) {
        shown = picture;
        waits.set(true);
        bell.release();
    }

    private void keepOn() {
        try {
            while (true) {
                // Once a day also where nothing is noted, so that there are always days ahead.
                bell.tryAcquire(1, TimeUnit.DAYS);
                Thread.sleep(A_MOMENT);
                bell.drainPermits();
                keep();
            }
        } catch (InterruptedException closing) {
            // Whoever closes keeps what is left.
        }
    }

    private void keep() {
        waits.set(false);
        var picture = shown;
        if (picture == null) {
            return;
        }
        try {
            TodayAside.leave(data, store.head(picture.entryCount()), picture, Instant.now());
            if (Thread.currentThread().isInterrupted()) {
                waits.set(true);
            }
        } catch (StoreFault unreadable) {
            // Today then reads the book itself.
        }
    }

    /** Keeps what is not kept yet. Before the book is closed. */
    @Override
    public void close() {
        thread.interrupt();
        try {
            thread.join(LONGEST_CLOSING);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
            return;
        }
        if (waits.get()) {
            keep();
        }
    }
}
