package eggwright.intake.folder;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Looks at a folder every few seconds until it is closed. A look that was begun is brought to its end. */
public final class Watch implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Watch.class);
    private static final long EVERY_MILLIS = 5_000;
    private static final long LONGEST_CLOSING_SECONDS = 60;

    private final ScheduledExecutorService looks = Executors.newSingleThreadScheduledExecutor(
            Thread.ofPlatform().daemon().name("watched-folder").factory());

    private Watch(WatchedFolder folder, long everyMillis) {
        var unused = looks.scheduleWithFixedDelay(() -> look(folder), 0, everyMillis, TimeUnit.MILLISECONDS);
    }

    public static Watch over(WatchedFolder folder) {
        return new Watch(folder, EVERY_MILLIS);
    }

    /** One look that fails must not be the last. */
    private static void look(WatchedFolder folder) {
        try {
            folder.look();
        } catch (RuntimeException fault) {
            LOG.error("The watched folder could not be looked at", fault);
        }
    }

    @Override
    public void close() {
        looks.shutdown();
        try {
            if (!looks.awaitTermination(LONGEST_CLOSING_SECONDS, TimeUnit.SECONDS)) {
                looks.shutdownNow();
            }
        } catch (InterruptedException hurried) {
            looks.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }
}
