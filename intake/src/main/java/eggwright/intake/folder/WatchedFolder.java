package eggwright.intake.folder;

import eggwright.intake.file.ByHand;
import eggwright.intake.file.ColumnMemory;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.file.FileShape;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.folder.WatchedFile.State;
import eggwright.intake.folder.WatchedFile.Why;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A folder of loggers' files. Each look takes the files that are new or have grown and lie still. Nothing in the folder is
 * moved, changed or deleted. Looks follow each other; the state can be read by any thread.
 *
 * <p>It is looked at again and again rather than listened to, since a folder on another machine tells nothing of itself.
 */
public final class WatchedFolder {
    /** A file that has not changed for so long has stopped growing: loggers write a row in far less. */
    public static final Duration STILL = Duration.ofSeconds(5);

    /** What broke for no fault of the file, as on a full disk, is tried again after so long. */
    static final Duration AGAIN = Duration.ofMinutes(1);

    private static final Logger LOG = LoggerFactory.getLogger(WatchedFolder.class);

    /** While many files are taken the list is made anew so often: after each of thousands it would cost more than they. */
    private static final Duration SHOWN_EVERY = Duration.ofSeconds(1);

    private final Path folder;
    private final FileTaking taking;
    private final ColumnMemory memory;
    private final LoggerFiles files;
    private final Supplier<FarmPlaces> farm;
    private final InstantSource clock;
    private final Map<String, Noticed> noticed = new TreeMap<>();
    private SortedSet<String> unreadable = new TreeSet<>();
    private volatile Looked looked;

    /** A file as it was when it was last asked. */
    private record Noticed(FileShape shape, Instant since, State state, Around around) {}

    /** What else decides whether a file can be taken. */
    private record Around(FarmPlaces farm, int learnt) {}

    /**
     * What came of the last look.
     *
     * @param trouble why the folder itself could not be read; empty where it could
     */
    public record Looked(Path folder, Optional<Instant> at, String trouble, List<WatchedFile> files) {
        public Looked {
            files = List.copyOf(files);
        }
    }

    /** @param farm asked at each look, since machines are added */
    public WatchedFolder(
            Path folder, LoggerFiles files, ColumnMemory memory, Supplier<FarmPlaces> farm, InstantSource clock) {
        this.folder = folder.toAbsolutePath().normalize();
        this.taking = new FileTaking(this.folder, files);
        this.files = files;
        this.memory = memory;
        this.farm = farm;
        this.clock = clock;
        this.looked = new Looked(this.folder, Optional.empty(), "", List.of());
    }

    /** What came of the last look, and what a person took by hand since then. */
    public Looked looked() {
        var last = looked;
        return new Looked(
                last.folder(),
                last.at(),
                last.trouble(),
                last.files().stream().map(this::orByHand).toList());
    }

    private WatchedFile orByHand(WatchedFile file) {
        return file.state() instanceof State.NotTaken
                ? files.byHand()
                        .taken(folder.resolve(file.name()))
                        .map(taken -> new WatchedFile(file.name(), new State.Taken(taken.at(), taken.what())))
                        .orElse(file)
                : file;
    }

    /** Looks once. */
    public synchronized void look() {
        var now = clock.instant();
        try {
            var walk = FolderWalk.through(folder);
            unreadable = walk.unreadable();
            noticed.keySet().retainAll(walk.files().keySet());
            var shown = now;
            for (var file : walk.files().entrySet()) {
                one(file.getKey(), file.getValue());
                var then = clock.instant();
                if (!then.isBefore(shown.plus(SHOWN_EVERY))) {
                    show(now, "");
                    shown = then;
                }
            }
            show(now, "");
        } catch (IOException unread) {
            LOG.debug("{} could not be read", folder, unread);
            show(now, String.valueOf(unread.getMessage()));
        }
    }

    private void show(Instant now, String trouble) {
        looked = new Looked(
                folder,
                Optional.of(now),
                trouble,
                Stream.concat(
                                unreadable.stream()
                                        .map(name ->
                                                new WatchedFile(name, new State.NotTaken(now, new Why.Unreadable()))),
                                noticed.entrySet().stream()
                                        .map(n -> new WatchedFile(
                                                n.getKey(), n.getValue().state())))
                        .toList());
    }

    private void one(String name, FileShape shape) {
        var path = folder.resolve(name);
        var byHand = files.byHand().taken(path);
        if (byHand.isPresent()) {
            // Asked anew: it may have grown, and been taken by hand, since the folder was walked.
            if (byHand.get().shape().isStillOf(path)) {
                takenByHand(name, byHand.get());
                return;
            }
            files.byHand().forget(path, byHand.get());
        }
        if (!files.byHand().holds(path)) {
            oneOfTheFolder(name, shape);
        }
    }

    private void takenByHand(String name, ByHand.Taken taken) {
        var state = new State.Taken(taken.at(), taken.what());
        var last = noticed.put(
                name, new Noticed(taken.shape(), taken.at(), state, new Around(farm.get(), files.learnt())));
        if (last == null || !last.state().equals(state)) {
            rememberIfPossible(name, taken.shape());
        }
    }

    private void oneOfTheFolder(String name, FileShape shape) {
        var now = clock.instant();
        var around = new Around(farm.get(), files.learnt());
        var last = noticed.get(name);
        if (last == null || !last.shape().equals(shape)) {
            var known = last == null && memory.find(setting(name)).equals(Optional.of(shape.text()));
            noticed.put(name, new Noticed(shape, now, known ? new State.TakenBefore() : new State.Growing(), around));
        } else if (isDue(last, around, now)) {
            var state = taking.take(name, shape, around.farm(), now);
            noticed.put(name, new Noticed(shape, last.since(), state, around));
            if (state instanceof State.Taken) {
                rememberIfPossible(name, shape);
            }
        }
    }

    /** It is taken by now; at worst it is read once more after the next start, and all of it is known. */
    private void rememberIfPossible(String name, FileShape shape) {
        try {
            memory.keep(setting(name), shape.text());
        } catch (RuntimeException forgotten) {
            LOG.warn("{} is taken; that it was could not be remembered", name, forgotten);
        }
    }

    private boolean isDue(Noticed last, Around around, Instant now) {
        return switch (last.state()) {
            case State.Growing() ->
                last.shape().bytes() > 0 && !now.isBefore(last.since().plus(STILL));
            case State.NotTaken(var at, var why) ->
                !last.around().equals(around) || (why instanceof Why.Broke && !now.isBefore(at.plus(AGAIN)));
            case State.Taken taken -> false;
            case State.TakenBefore() -> false;
        };
    }

    private String setting(String name) {
        return "taken from " + folder.resolve(name);
    }
}
