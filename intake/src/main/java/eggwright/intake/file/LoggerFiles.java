package eggwright.intake.file;

import eggwright.climate.reading.ReadingStore;
import eggwright.sheet.logger.LoggerColumns;
import eggwright.sheet.logger.LoggerFile;
import eggwright.sheet.logger.LoggerImport;
import eggwright.sheet.logger.Looked;
import eggwright.sheet.logger.TimeForm;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Takes loggers' files, by command, from a page or out of a folder: all by the same columns, remembered in one place. */
public final class LoggerFiles {
    private static final Logger LOG = LoggerFactory.getLogger(LoggerFiles.class);
    private static final String COLUMNS = "columns";
    private static final String CLOCK = "clock";
    private static final String DATES = "dates";
    private static final String THE_FARMS = "the farm's";

    private final ReadingStore readings;
    private final ColumnMemory memory;
    private final AtomicInteger learnt = new AtomicInteger();
    private final ByHand byHand = new ByHand();

    public LoggerFiles(ReadingStore readings, ColumnMemory memory) {
        this.readings = readings;
        this.memory = memory;
    }

    /** What the columns of such a file held when one was last taken; empty where none was. */
    public Optional<LoggerColumns> remembered(LoggerFile file) {
        return kept(file, COLUMNS)
                .flatMap(text -> LoggerColumns.parse(text) instanceof LoggerColumns.Parsed.Whole(var columns)
                        ? Optional.of(columns)
                        : Optional.empty());
    }

    /** The names themselves, so that what is remembered can be read by a person. */
    private static String setting(String what, List<String> header) {
        return what + " of " + String.join(",", header);
    }

    private void remember(Looked.Seen seen, ZoneId zone, ZoneId farms) {
        remember(setting(COLUMNS, seen.header()), seen.columns().text());
        remember(setting(CLOCK, seen.header()), zone.equals(farms) ? THE_FARMS : zone.getId());
        dates(seen.form().name()).ifPresent(form -> remember(setting(DATES, seen.header()), form.name()));
    }

    private void remember(String name, String value) {
        if (!memory.find(name).equals(Optional.of(value))) {
            memory.keep(name, value);
            learnt.incrementAndGet();
        }
    }

    /** Grows whenever a header is learnt, or learnt anew: what could not be read before may be readable now. */
    public int learnt() {
        return learnt.get();
    }

    /**
     * How a file would be read, by what a person says, else by what is remembered, else by looking. An order of days and months that is
     * remembered counts only where the file does not tell its own.
     */
    public Looked look(LoggerFile file, Optional<LoggerColumns> said, Optional<TimeForm> dates) {
        var columns = said.or(() -> remembered(file));
        var looked = LoggerImport.look(file, columns, dates);
        return looked instanceof Looked.InDoubt && dates.isEmpty()
                ? kept(file, DATES)
                        .flatMap(LoggerFiles::dates)
                        .map(known -> LoggerImport.look(file, columns, Optional.of(known)))
                        .orElse(looked)
                : looked;
    }

    private static Optional<TimeForm> dates(String name) {
        return Stream.of(TimeForm.DAY_FIRST, TimeForm.MONTH_FIRST)
                .filter(form -> form.name().equals(name))
                .findFirst();
    }

    /** The zone that such a logger's clock keeps; empty where it is the farm's, or none was taken yet. */
    public Optional<ZoneId> zone(LoggerFile file) {
        return kept(file, CLOCK)
                .filter(id -> ZoneId.getAvailableZoneIds().contains(id) || id.equals("Z"))
                .map(ZoneId::of);
    }

    private Optional<String> kept(LoggerFile file, String what) {
        return LoggerImport.header(file).flatMap(header -> memory.find(setting(what, header)));
    }

    /** What a person took, or takes, of a watched folder. */
    public ByHand byHand() {
        return byHand;
    }

    /**
     * Takes a file of a watched folder for a person, who may say another machine than the folder would. Empty, with nothing
     * kept, where it is no longer of the shape that it had before it was looked at.
     */
    public Optional<TakenFile> takeWhereItLies(
            Path path, FileShape shape, LoggerFile file, Looked.Seen seen, LoggerImport.Into into, ZoneId farms) {
        return byHand.take(path, shape, into.now(), () -> take(file, seen, into, farms, () -> shape.isStillOf(path)));
    }

    /** Whether the file is still the one that was looked at; asked before anything is kept. */
    public interface Unchanged {
        boolean holds();
    }

    /**
     * Keeps all of a file that was looked at, or nothing, and remembers its columns and its clock.
     *
     * @param farms the farm's own zone
     */
    public TakenFile take(LoggerFile file, Looked.Seen seen, LoggerImport.Into into, ZoneId farms) {
        return take(file, seen, into, farms, () -> true).orElseThrow();
    }

    /** The same; empty, with nothing kept, where the file changed meanwhile. */
    public Optional<TakenFile> take(
            LoggerFile file, Looked.Seen seen, LoggerImport.Into into, ZoneId farms, Unchanged unchanged) {
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
                            rememberIfPossible(file, seen, into.zone(), farms);
                            yield kept(file, seen, loaded, taken.fresh());
                        }
                    });
        }
    }

    /** All is kept by now: to say otherwise would be untrue. At worst its columns are asked for once more. */
    private void rememberIfPossible(LoggerFile file, Looked.Seen seen, ZoneId zone, ZoneId farms) {
        try {
            remember(seen, zone, farms);
        } catch (RuntimeException forgotten) {
            LOG.warn("{} is kept; what its columns hold could not be remembered", file.name(), forgotten);
        }
    }

    private TakenFile.Odd odd(LoggerFile file, LoggerImport.Outcome.Loaded loaded) {
        try {
            var odd = Oddities.of(readings, loaded.channels(), loaded.first(), loaded.last());
            return new TakenFile.Odd.Counted(odd.held(), odd.firstHeld(), odd.gaps());
        } catch (RuntimeException notCounted) {
            LOG.warn("{} is kept; what is odd in it could not be counted", file.name(), notCounted);
            return new TakenFile.Odd.NotCounted();
        }
    }

    private TakenFile.Kept kept(LoggerFile file, Looked.Seen seen, LoggerImport.Outcome.Loaded loaded, long fresh) {
        return new TakenFile.Kept(
                loaded.rows(),
                fresh,
                loaded.values() - fresh,
                loaded.empty(),
                odd(file, loaded),
                loaded.first(),
                loaded.last(),
                seen.columns().text(),
                loaded.channels());
    }
}
