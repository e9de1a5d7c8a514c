package eggwright.sheet.logger;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.SensorName;
import eggwright.sheet.problem.Problem;
import eggwright.sheet.problem.Problems;
import eggwright.units.OutOfRange;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Takes a logger's file into a load of readings, row by row. All or nothing is the load's to promise. */
public final class LoggerImport {
    /** What loggers write where a sensor gave nothing. */
    private static final Set<String> NOTHING =
            Set.of("-", "--", "---", "nan", "null", "n/a", "na", "none", "err", "error", "off", "open");

    /** A clock may be a little ahead; more, and the file is of another zone. */
    private static final long AHEAD_MILLIS = 10 * 60_000L;

    private final Looked.Seen seen;
    private final Into into;
    private final ReadingStore.Load load;
    private final Layout layout;
    private final Problems problems;
    private final Map<Key, Source> sources = new HashMap<>();
    private final FileClock.Running running;
    private final DecimalMark mark;
    private final int firstReading;
    private long rows;
    private long values;
    private long empty;
    private @Nullable Source lastSource;
    private long first = Long.MAX_VALUE;
    private long last = Long.MIN_VALUE;

    /**
     * Where readings go.
     *
     * @param place of rows that name none; empty where each has to
     * @param zone of times without an offset
     * @param now nothing can have been read later
     */
    public record Into(Optional<ReadingPlace> place, ZoneId zone, Instant now) {}

    /** What came of it. */
    public sealed interface Outcome {
        /**
         * All is in the load.
         *
         * @param values readings, those that stand twice in the file counted twice
         * @param empty cells in which the sensor gave nothing
         */
        record Loaded(long rows, long values, long empty, Instant first, Instant last, List<Channel> channels)
                implements Outcome {
            public Loaded {
                channels = List.copyOf(channels);
            }
        }

        /** The file cannot be taken as it stands; what is in the load is to be left. */
        record Refused(List<Problem> problems, int beyond) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    private record Key(String machine, String sensor) {}

    /** One sensor of one machine: rows of it follow each other mostly, so that the last one is at hand. */
    private record Source(Key key, FileClock clock, Optional<Channel>[] channels) {}

    private LoggerImport(LoggerFile file, Looked.Seen seen, Sample sample, Into into, ReadingStore.Load load) {
        this.seen = seen;
        this.into = into;
        this.load = load;
        this.layout = new Layout(seen.header(), seen.columns().byName());
        this.problems = new Problems(file.name());
        this.mark = sample.mark();
        this.firstReading = sample.rows().getFirst().number();
        this.running = running(sample);
    }

    /**
     * Looks at a file.
     *
     * @param said what a person said of some or all columns
     * @param dates whether days or months come first, where a person said so
     */
    public static Looked look(LoggerFile file, Optional<LoggerColumns> said, Optional<TimeForm> dates) {
        return switch (file.sample()) {
            case LoggerFile.Sampled.Refused(var problems) -> Looked.InDoubt.unseen(problems);
            case LoggerFile.Sampled.Seen(var sample) -> Looking.at(file.name(), sample, said, dates);
        };
    }

    /** The names of a file's columns, under which what is known of them can be remembered; empty where it cannot be read. */
    public static Optional<List<String>> header(LoggerFile file) {
        return switch (file.sample()) {
            case LoggerFile.Sampled.Refused refused -> Optional.empty();
            case LoggerFile.Sampled.Seen(var sample) -> Optional.of(sample.header());
        };
    }

    /** Puts every reading of a file that was looked at into a load. */
    public static Outcome load(LoggerFile file, Looked.Seen seen, Into into, ReadingStore.Load load) {
        return switch (file.sample()) {
            case LoggerFile.Sampled.Refused(var problems) -> new Outcome.Refused(problems, 0);
            case LoggerFile.Sampled.Seen(var sample) ->
                switch (file.open()) {
                    case LoggerFile.Opened.Refused(var problems) -> new Outcome.Refused(problems, 0);
                    case LoggerFile.Opened.Rows(var rows) -> {
                        try (rows) {
                            yield new LoggerImport(file, seen, sample, into, load).take(rows);
                        }
                    }
                };
        };
    }

    private FileClock.Running running(Sample sample) {
        Optional<TimeForm.Written> before = Optional.empty();
        int forwards = 0;
        for (var row : sample.rows()) {
            var now = layout.time(row).flatMap(seen.form()::read);
            if (before.isPresent() && now.isPresent()) {
                forwards +=
                        Integer.signum(now.get().local().compareTo(before.get().local()));
            }
            before = now;
        }
        return forwards < 0 ? FileClock.Running.BACKWARDS : FileClock.Running.FORWARDS;
    }

    private Outcome take(LoggerRows from) {
        for (var row = from.next(); row != null; row = from.next()) {
            // Titles, the header, and a line of units below it.
            if (row.number() >= firstReading && !isBlank(row)) {
                one(row);
            }
        }
        var fault = from.fault();
        if (fault != null) {
            problems.add(fault.row(), fault.column(), fault.value(), fault.what(), fault.right());
        }
        if (problems.isEmpty() && values == 0) {
            problems.add(null, null, null, "holds no reading", "Name a file that a logger wrote.");
        }
        return problems.isEmpty()
                ? new Outcome.Loaded(
                        rows, values, empty, Instant.ofEpochMilli(first), Instant.ofEpochMilli(last), channels())
                : new Outcome.Refused(problems.shown(), problems.beyond());
    }

    private List<Channel> channels() {
        return sources.values().stream()
                .flatMap(source -> Arrays.stream(source.channels()))
                .flatMap(channel -> Optional.ofNullable(channel).stream())
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    private static boolean isBlank(LoggerRows.Row row) {
        for (var cell : row.cells()) {
            if (!cell.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private void one(LoggerRows.Row row) {
        var written = layout.time(row);
        if (written.isEmpty()) {
            problems.add(row.number(), null, null, "has no time", "Write when it was read, or take the row out.");
            return;
        }
        var time = seen.form().read(written.get());
        if (time.isEmpty()) {
            problems.add(
                    row.number(),
                    null,
                    written.get(),
                    "is not a time like those above",
                    "Write it as the others are, or take the row out.");
            return;
        }
        var source = source(layout.machine(row).orElse(""), layout.sensor(row).orElse(""));
        switch (source.clock().tell(time.get())) {
            case FileClock.Told.LeaptOver() ->
                problems.add(
                        row.number(),
                        null,
                        written.get(),
                        "is in the hour that clocks leapt over in " + into.zone(),
                        "If the logger keeps another time, say which, as in --zone UTC.");
            case FileClock.Told.At(long millis) -> {
                if (millis > into.now().toEpochMilli() + AHEAD_MILLIS) {
                    problems.add(
                            row.number(),
                            null,
                            written.get(),
                            "is still to come in " + into.zone(),
                            "If the logger keeps another time, say which, as in --zone UTC; else mend its clock.");
                } else {
                    rows++;
                    values(row, millis, source);
                }
            }
        }
    }

    private Source source(String machine, String sensor) {
        var last = lastSource;
        if (last != null
                && last.key().machine().equals(machine)
                && last.key().sensor().equals(sensor)) {
            return last;
        }
        var source = sources.computeIfAbsent(new Key(machine, sensor), this::fresh);
        lastSource = source;
        return source;
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private Source fresh(Key key) {
        return new Source(
                key,
                new FileClock(into.zone(), running),
                new Optional[layout.values().size()]);
    }

    private void values(LoggerRows.Row row, long millis, Source source) {
        for (int i = 0; i < layout.values().size(); i++) {
            var at = layout.values().get(i);
            var text = at.index() < row.cells().size() ? row.cells().get(at.index()) : "";
            double number = mark.number(text);
            if (!Double.isNaN(number)) {
                var channel = channel(row, source, i);
                if (channel.isPresent()) {
                    load.add(channel.get(), millis, number);
                    values++;
                    first = Math.min(first, millis);
                    last = Math.max(last, millis);
                }
            } else if (text.isEmpty() || NOTHING.contains(text.toLowerCase(Locale.ROOT))) {
                empty++;
            } else {
                problems.add(
                        row.number(),
                        at.name(),
                        text,
                        "is not a number",
                        "Write a number, or leave the cell empty where nothing was read.");
            }
        }
    }

    @SuppressWarnings("OptionalAssignedToNull")
    private Optional<Channel> channel(LoggerRows.Row row, Source source, int index) {
        var known = source.channels()[index];
        if (known == null) {
            known = channel(row, source.key(), layout.values().get(index));
            source.channels()[index] = known;
        }
        return known;
    }

    private Optional<Channel> channel(LoggerRows.Row row, Key key, Layout.ValueAt at) {
        try {
            var place = key.machine().isEmpty() ? into.place() : Optional.of(place(key.machine()));
            if (place.isEmpty()) {
                problems.add(
                        row.number(),
                        null,
                        null,
                        "names no machine",
                        "Write one, or say where such rows belong, as in --machine Setter.");
                return Optional.empty();
            }
            var name = key.sensor().isEmpty()
                    ? at.sensor().orElse(SensorName.ONLY)
                    : new SensorName(
                            at.sensor().map(s -> key.sensor() + ", " + s.text()).orElse(key.sensor()));
            return Optional.of(
                    new Channel(place.get(), name, at.use().quantity(), at.use().unit()));
        } catch (OutOfRange wrong) {
            problems.add(
                    row.number(),
                    null,
                    key.machine() + key.sensor(),
                    "is no name: " + wrong.getMessage(),
                    "Shorten it.");
            return Optional.empty();
        }
    }

    private static ReadingPlace place(String machine) {
        return switch (machine.toLowerCase(Locale.ROOT)) {
            case "egg room" -> new ReadingPlace.EggRoom();
            case "brooder" -> new ReadingPlace.Brooder();
            default -> new ReadingPlace.InMachine(new MachineName(machine));
        };
    }
}
