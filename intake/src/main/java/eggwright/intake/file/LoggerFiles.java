package eggwright.intake.file;

import eggwright.climate.reading.ReadingStore;
import eggwright.sheet.logger.LoggerColumns;
import eggwright.sheet.logger.LoggerFile;
import eggwright.sheet.logger.LoggerImport;
import eggwright.sheet.logger.Looked;
import eggwright.sheet.logger.TimeForm;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/** Takes loggers' files, by command, from a page or out of a folder: all by the same columns, remembered in one place. */
public final class LoggerFiles {
    private final ReadingStore readings;
    private final ColumnMemory memory;
    private final AtomicInteger learnt = new AtomicInteger();

    public LoggerFiles(ReadingStore readings, ColumnMemory memory) {
        this.readings = readings;
        this.memory = memory;
    }

    /** What the columns of such a file held when one was last taken; empty where none was. */
    public Optional<LoggerColumns> remembered(LoggerFile file) {
        return LoggerImport.header(file)
                .flatMap(header -> memory.find(setting(header)))
                .flatMap(text -> LoggerColumns.parse(text) instanceof LoggerColumns.Parsed.Whole(var columns)
                        ? Optional.of(columns)
                        : Optional.empty());
    }

    /** The names themselves, so that what is remembered can be read by a person. */
    private static String setting(List<String> header) {
        return "columns of " + String.join(",", header);
    }

    private void remember(String header, String columns) {
        if (!memory.find(header).equals(Optional.of(columns))) {
            memory.keep(header, columns);
            learnt.incrementAndGet();
        }
    }

    /** Grows whenever a header is learnt, or learnt anew: what could not be read before may be readable now. */
    public int learnt() {
        return learnt.get();
    }

    /** How a file would be read, by what a person says, else by what is remembered, else by looking. */
    public Looked look(LoggerFile file, Optional<LoggerColumns> said, Optional<TimeForm> dates) {
        return LoggerImport.look(file, said.or(() -> remembered(file)), dates);
    }

    /** Whether the file is still the one that was looked at; asked before anything is kept. */
    public interface Unchanged {
        boolean holds();
    }

    /** Keeps all of a file that was looked at, or nothing, and remembers its columns. */
    public TakenFile take(LoggerFile file, Looked.Seen seen, LoggerImport.Into into) {
        return take(file, seen, into, () -> true).orElseThrow();
    }

    /** The same; empty, with nothing kept, where the file changed meanwhile. */
    public Optional<TakenFile> take(LoggerFile file, Looked.Seen seen, LoggerImport.Into into, Unchanged unchanged) {
        try (var load = readings.load()) {
            var outcome = LoggerImport.load(file, seen, into, load);
            if (!unchanged.holds()) {
                return Optional.empty();
            }
            return Optional.of(
                    switch (outcome) {
                        case LoggerImport.Outcome.Refused(var problems, int beyond) ->
                            new TakenFile.Refused(problems, beyond);
                        case LoggerImport.Outcome.Loaded loaded -> {
                            var taken = load.keep();
                            remember(setting(seen.header()), seen.columns().text());
                            yield kept(seen, loaded, taken.fresh());
                        }
                    });
        }
    }

    private TakenFile.Kept kept(Looked.Seen seen, LoggerImport.Outcome.Loaded loaded, long fresh) {
        var odd = Oddities.of(readings, loaded.channels(), loaded.first(), loaded.last());
        return new TakenFile.Kept(
                loaded.rows(),
                fresh,
                loaded.values() - fresh,
                loaded.empty(),
                odd.held(),
                odd.firstHeld(),
                odd.gaps(),
                loaded.first(),
                loaded.last(),
                seen.columns().text(),
                loaded.channels());
    }
}
