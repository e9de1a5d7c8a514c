package eggwright.intake.folder;

import eggwright.intake.file.ColumnMemory;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.folder.WatchedFile.State;
import eggwright.intake.folder.WatchedFile.Why;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
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
    private static final int DEEPEST = 3;
    private static final List<String> UNFINISHED = List.of(".part", ".tmp", ".crdownload", "~");

    private final Path folder;
    private final FileTaking taking;
    private final ColumnMemory memory;
    private final LoggerFiles files;
    private final Supplier<FarmPlaces> farm;
    private final InstantSource clock;
    private final Map<String, Noticed> noticed = new TreeMap<>();
    private volatile Looked looked;

    /** A file as it was when it was last asked. */
    private record Noticed(Shape shape, Instant since, State state, Around around) {}

    /** What says whether a file is still the same. */
    record Shape(long bytes, long modifiedMillis) {
        static Shape of(BasicFileAttributes attributes) {
            return new Shape(attributes.size(), attributes.lastModifiedTime().toMillis());
        }

        String text() {
            return bytes + " " + modifiedMillis;
        }
    }

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

    /** What came of the last look. */
    public Looked looked() {
        return looked;
    }

    /** Looks once. */
    public synchronized void look() {
        var now = clock.instant();
        try {
            var there = there();
            noticed.keySet().retainAll(there.keySet());
            for (var file : there.entrySet()) {
                one(file.getKey(), file.getValue());
                show(now, "");
            }
            show(now, "");
        } catch (IOException | UncheckedIOException unread) {
            LOG.debug("{} could not be read", folder, unread);
            show(now, String.valueOf(unread.getMessage()));
        }
    }

    private void show(Instant now, String trouble) {
        looked = new Looked(
                folder,
                Optional.of(now),
                trouble,
                noticed.entrySet().stream()
                        .map(n -> new WatchedFile(n.getKey(), n.getValue().state()))
                        .toList());
    }

    /** By their names under the folder. Hidden files and such as programs write until they are whole are left out. */
    private Map<String, Shape> there() throws IOException {
        var root = folder.toRealPath();
        try (Stream<Path> all = Files.walk(root, DEEPEST)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !isPassedOver(root.relativize(file)))
                    .collect(Collectors.toMap(
                            file -> root.relativize(file).toString().replace('\\', '/'),
                            WatchedFolder::shape,
                            (a, b) -> b,
                            TreeMap::new));
        }
    }

    private static boolean isPassedOver(Path under) {
        for (var part : under) {
            if (part.toString().startsWith(".")) {
                return true;
            }
        }
        return UNFINISHED.stream().anyMatch(under.toString()::endsWith);
    }

    private static Shape shape(Path file) {
        try {
            return Shape.of(Files.readAttributes(file, BasicFileAttributes.class));
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    private void one(String name, Shape shape) {
        var now = clock.instant();
        var around = new Around(farm.get(), files.learnt());
        var last = noticed.get(name);
        if (last == null || !last.shape().equals(shape)) {
            var known = last == null && memory.find(setting(name)).equals(Optional.of(shape.text()));
            noticed.put(name, new Noticed(shape, now, known ? new State.TakenBefore() : new State.Growing(), around));
        } else if (isDue(last, around, now)) {
            var state = taking.take(name, shape, around.farm(), now);
            if (state instanceof State.Taken) {
                memory.keep(setting(name), shape.text());
            }
            noticed.put(name, new Noticed(shape, last.since(), state, around));
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
