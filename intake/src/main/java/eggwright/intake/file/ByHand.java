package eggwright.intake.file;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Files of a watched folder that a person takes on a page. The folder leaves them alone meanwhile and counts them as taken
 * afterwards: else it would take them a second time, perhaps under another machine. Safe for many threads.
 */
public final class ByHand {
    private final Map<Path, Hand> files = new ConcurrentHashMap<>();

    private sealed interface Hand {
        record Taking() implements Hand {}

        record Done(Taken taken) implements Hand {}
    }

    /** A file that was taken by hand, as it was then. */
    public record Taken(FileShape shape, Instant at, TakenFile.Kept what) {}

    /**
     * Lets nobody else take the file until the taking has come to its end. What was taken already, and has not changed since,
     * is not taken again: as where it was opened in two windows. Empty also where another takes it just now.
     */
    Optional<TakenFile> take(Path file, FileShape shape, Instant at, Supplier<Optional<TakenFile>> taking) {
        var before = files.get(file);
        if (before instanceof Hand.Done(var taken) && taken.shape().equals(shape)) {
            return Optional.of(taken.what());
        }
        boolean isMine = before == null
                ? files.putIfAbsent(file, new Hand.Taking()) == null
                : before instanceof Hand.Done && files.replace(file, before, new Hand.Taking());
        if (!isMine) {
            return Optional.empty();
        }
        Optional<TakenFile> outcome = Optional.empty();
        try {
            outcome = taking.get();
            return outcome;
        } finally {
            if (outcome.orElse(null) instanceof TakenFile.Kept kept) {
                files.put(file, new Hand.Done(new Taken(shape, at, kept)));
            } else {
                files.remove(file);
            }
        }
    }

    /** Whether it is being taken, or was. */
    public boolean holds(Path file) {
        return files.containsKey(file);
    }

    /** What came of it; empty where it was not taken by hand, or is being taken just now. */
    public Optional<Taken> taken(Path file) {
        return files.get(file) instanceof Hand.Done(var taken) ? Optional.of(taken) : Optional.empty();
    }

    /** The file has changed since that was taken: it is the folder's again, unless a person took it anew meanwhile. */
    public void forget(Path file, Taken taken) {
        files.remove(file, new Hand.Done(taken));
    }
}
