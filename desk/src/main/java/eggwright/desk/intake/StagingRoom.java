package eggwright.desk.intake;

import eggwright.desk.Brought;
import eggwright.sheet.logger.LoggerFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Files that were brought and not taken yet. They lie in the machine's temporary folder, a few at most and not for long:
 * whoever wants one taken later brings it again. Safe for many threads.
 */
final class StagingRoom {
    static final int MOST = 5;
    static final Duration LONGEST = Duration.ofHours(2);

    private static final Logger LOG = LoggerFactory.getLogger(StagingRoom.class);
    private static final int ID_BYTES = 16;
    private static final int LONGEST_NAME = 80;

    private final InstantSource clock;
    private final RandomGenerator random;
    private final Map<String, Staged> staged = new LinkedHashMap<>();

    /** @param random hard to guess */
    StagingRoom(InstantSource clock, RandomGenerator random) {
        this.clock = clock;
        this.random = random;
    }

    /**
     * Puts a file aside.
     *
     * @return empty where as many as can lie here are all being worked on
     * @throws IOException if there is no room for it on the disk
     */
    Optional<Staged> put(Brought brought, String place) throws IOException {
        var folder = Files.createTempDirectory("eggwright-file");
        // Where the desk is stopped before it throws the file away, the machine's own end of things does.
        folder.toFile().deleteOnExit();
        var file = folder.resolve(plain(brought.name()));
        file.toFile().deleteOnExit();
        try (var in = brought.opening().open()) {
            Files.copy(in, file);
        } catch (IOException full) {
            throwAway(folder);
            throw full;
        }
        var added = add(LoggerFile.at(file), new Staged.Origin.Aside(folder), place);
        if (added.isEmpty()) {
            throwAway(folder);
        }
        return added;
    }

    /** A file that lies where it lies; empty as for {@link #put}. */
    Optional<Staged> watched(Path file, String place) {
        return add(LoggerFile.at(file), new Staged.Origin.Watched(file), place);
    }

    private synchronized Optional<Staged> add(LoggerFile file, Staged.Origin origin, String place) {
        var now = clock.instant();
        clear(s -> s.since().plus(LONGEST).isBefore(now));
        if (staged.size() >= MOST) {
            var oldest = staged.values().stream().filter(s -> !s.isInUse()).findFirst();
            if (oldest.isEmpty()) {
                return Optional.empty();
            }
            clear(s -> s == oldest.get());
        }
        var bytes = new byte[ID_BYTES];
        random.nextBytes(bytes);
        var one = new Staged(HexFormat.of().formatHex(bytes), file, origin, place, now);
        staged.put(one.id(), one);
        return Optional.of(one);
    }

    private void clear(Predicate<Staged> which) {
        for (Iterator<Staged> all = staged.values().iterator(); all.hasNext(); ) {
            var one = all.next();
            if (which.test(one) && !one.isInUse()) {
                all.remove();
                letGo(one);
            }
        }
    }

    /** Works on a file, which stays here until that is done; empty where there is none of this id. */
    <T> Optional<T> using(String id, Function<Staged, T> work) {
        var found = begin(id);
        try {
            return found.map(work);
        } finally {
            found.ifPresent(Staged::end);
        }
    }

    private synchronized Optional<Staged> begin(String id) {
        var now = clock.instant();
        clear(s -> s.since().plus(LONGEST).isBefore(now));
        var found = Optional.ofNullable(staged.get(id));
        found.ifPresent(Staged::begin);
        return found;
    }

    /** Its bytes are needed no more; what became of it can still be shown. */
    void letGo(Staged one) {
        switch (one.origin()) {
            case Staged.Origin.Aside(var folder) -> throwAway(folder);
            case Staged.Origin.Watched watched -> {}
        }
    }

    private static void throwAway(Path folder) {
        try (var all = Files.walk(folder)) {
            for (var path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException | UncheckedIOException stays) {
            LOG.debug("{} was not thrown away", folder, stays);
        }
    }

    /** A name that every disk takes, and that leads nowhere else. */
    private static String plain(String name) {
        var plain = name.replaceAll("[^\\p{L}\\p{N}._ -]", "_").strip().replaceFirst("^\\.+", "");
        var end = plain.substring(Math.max(0, plain.length() - LONGEST_NAME));
        return end.isEmpty() ? "file" : end;
    }
}
