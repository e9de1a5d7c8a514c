package eggwright.desk.intake;

import eggwright.intake.file.FileShape;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.file.TakenFile;
import eggwright.sheet.logger.LoggerFile;
import eggwright.sheet.logger.LoggerImport;
import eggwright.sheet.logger.Looked;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;

/** Sees to it that what is taken is what was looked at. Made before the look. */
sealed interface Guard {
    /** A copy of the desk's own: nobody else writes it. */
    record Own() implements Guard {}

    /** In the watched folder: a logger may still be writing it, and the folder may take it too. */
    record Watched(Path path, FileShape before) implements Guard {}

    /** In the watched folder no more. */
    record Gone() implements Guard {}

    static Guard of(Staged file) {
        return switch (file.origin()) {
            case Staged.Origin.Aside aside -> new Own();
            case Staged.Origin.Watched(var path) -> watched(path);
        };
    }

    private static Guard watched(Path path) {
        try {
            return new Watched(path, FileShape.of(path));
        } catch (IOException gone) {
            return new Gone();
        }
    }

    /** Empty, with nothing kept, where the file changed since. */
    default Optional<TakenFile> take(
            LoggerFiles files, LoggerFile file, Looked.Seen seen, LoggerImport.Into into, ZoneId farms) {
        return switch (this) {
            case Own() -> Optional.of(files.take(file, seen, into, farms));
            case Watched(var path, var before) -> files.takeWhereItLies(path, before, file, seen, into, farms);
            case Gone() -> Optional.empty();
        };
    }
}
