package eggwright.intake.folder;

import eggwright.climate.reading.ReadingPlace;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.file.FileShape;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.file.TakenFile;
import eggwright.intake.folder.WatchedFile.State;
import eggwright.intake.folder.WatchedFile.Why;
import eggwright.sheet.logger.ColumnUse;
import eggwright.sheet.logger.LoggerFile;
import eggwright.sheet.logger.LoggerImport;
import eggwright.sheet.logger.Looked;
import eggwright.sheet.problem.Near;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Takes one file of a watched folder, or says why not. */
final class FileTaking {
    private static final Logger LOG = LoggerFactory.getLogger(FileTaking.class);

    private final Path folder;
    private final LoggerFiles files;

    FileTaking(Path folder, LoggerFiles files) {
        this.folder = folder;
        this.files = files;
    }

    /** Whether a place can be told, and which; empty where every row has to name its own. */
    private sealed interface Where {
        record At(Optional<ReadingPlace> place) implements Where {}

        record Nowhere(Why why) implements Where {}
    }

    State take(String name, FileShape shape, FarmPlaces farm, Instant now) {
        try {
            return tried(name, shape, farm, now);
        } catch (RuntimeException broke) {
            LOG.warn("{} was not taken", name, broke);
            return new State.NotTaken(now, new Why.Broke(String.valueOf(broke.getMessage())));
        }
    }

    private State tried(String name, FileShape shape, FarmPlaces farm, Instant now) {
        if (name.split("/", -1).length > 2) {
            return new State.NotTaken(now, new Why.TooDeep());
        }
        var path = folder.resolve(name);
        var file = LoggerFile.at(path);
        var columns = files.remembered(file);
        // Looked at even where nothing is remembered: what cannot be read at all is said first.
        return switch (files.look(file, columns, Optional.empty())) {
            case Looked.InDoubt doubt ->
                new State.NotTaken(now, new Why.Problems(new TakenFile.Refused(doubt.questions(), 0)));
            case Looked.Seen seen ->
                switch (where(name, seen, farm)) {
                    case Where.Nowhere(var why) -> new State.NotTaken(now, why);
                    case Where.At(var place) ->
                        columns.isEmpty()
                                ? new State.NotTaken(now, new Why.NotConfirmed())
                                : take(
                                        file,
                                        seen,
                                        new LoggerImport.Into(
                                                place, files.zone(file).orElse(farm.zone()), now),
                                        farm.zone(),
                                        path,
                                        shape);
                };
        };
    }

    private State take(
            LoggerFile file, Looked.Seen seen, LoggerImport.Into into, ZoneId farms, Path path, FileShape shape) {
        return files.take(file, seen, into, farms, () -> isStill(path, shape))
                .<State>map(taken -> switch (taken) {
                    case TakenFile.Kept kept -> new State.Taken(into.now(), kept);
                    case TakenFile.Refused refused -> new State.NotTaken(into.now(), new Why.Problems(refused));
                })
                .orElseGet(State.Growing::new);
    }

    /** Neither changed nor, while this one waited, taken by a person. */
    private boolean isStill(Path path, FileShape shape) {
        return shape.isStillOf(path) && !files.byHand().holds(path);
    }

    private static Where where(String name, Looked.Seen seen, FarmPlaces farm) {
        boolean namesMachines = seen.columns().byName().values().stream().anyMatch(ColumnUse.Machine.class::isInstance);
        int cut = name.indexOf('/');
        if (cut < 0) {
            return namesMachines ? new Where.At(Optional.empty()) : new Where.Nowhere(new Why.NoMachine());
        }
        var sub = name.substring(0, cut);
        var place = farm.named(sub);
        if (place.isPresent() || namesMachines) {
            return new Where.At(place);
        }
        return new Where.Nowhere(
                new Why.UnknownMachine(sub, Near.to(sub, farm.machines()).orElse("")));
    }
}
