package eggwright.desk.intake;

import eggwright.intake.file.TakenFile;
import eggwright.sheet.logger.LoggerFile;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/** A logger's file on its way in: looked at, perhaps more than once, then taken once. */
final class Staged {
    private final String id;
    private final LoggerFile file;
    private final Origin origin;
    private final String place;
    private final Instant since;
    /** What became of it; absent until it is taken. */
    private TakenFile.@Nullable Kept kept;
    /** How many requests work on it just now. */
    private final AtomicInteger users = new AtomicInteger();

    /** Where a file lies. */
    sealed interface Origin {
        /** Put aside by the desk in a folder of its own, and thrown away by it. */
        record Aside(Path folder) implements Origin {}

        /** In the watched folder, where it stays. */
        record Watched(Path path) implements Origin {}
    }

    /** @param place that was chosen when it was brought; empty where none was */
    Staged(String id, LoggerFile file, Origin origin, String place, Instant since) {
        this.id = id;
        this.file = file;
        this.origin = origin;
        this.place = place;
        this.since = since;
    }

    String id() {
        return id;
    }

    LoggerFile file() {
        return file;
    }

    Origin origin() {
        return origin;
    }

    String place() {
        return place;
    }

    Instant since() {
        return since;
    }

    /** While anybody works on it its bytes are not thrown away. */
    void begin() {
        users.incrementAndGet();
    }

    void end() {
        users.decrementAndGet();
    }

    boolean isInUse() {
        return users.get() > 0;
    }

    synchronized Optional<TakenFile.Kept> kept() {
        return Optional.ofNullable(kept);
    }

    synchronized void keep(TakenFile.Kept what) {
        kept = what;
    }
}
