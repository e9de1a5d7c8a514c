package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.name.MachineName;
import eggwright.book.picture.Picture;
import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.cli.voice.Refused;
import eggwright.cli.voice.Status;
import eggwright.climate.reading.ReadingPlace;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.file.TakenFile;
import eggwright.sheet.logger.LoggerColumns;
import eggwright.sheet.logger.LoggerFile;
import eggwright.sheet.logger.LoggerImport;
import eggwright.sheet.logger.Looked;
import eggwright.sheet.logger.TimeForm;
import eggwright.sheet.problem.Near;
import eggwright.sheet.problem.Problem;
import eggwright.store.SqliteEntryStore;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;

/** Takes what a logger wrote: columns found by looking, told back, and remembered for files of the same header. */
final class ReadingsImport {
    private static final List<String> REST = List.of("egg room", "brooder");

    private final FarmCommand command;
    private final LoggerFile file;

    private ReadingsImport(FarmCommand command) {
        this.command = command;
        this.file = LoggerFile.at(Path.of(command.word(1)));
    }

    static List<OptionSpec> options() {
        return List.of(
                FarmCommand.option(
                        "machine",
                        "NAME",
                        "readings: where the sensor hangs; \"egg room\" and \"brooder\" will do too"),
                FarmCommand.option(
                        "columns",
                        "NAME=WHAT,…",
                        "readings: what the columns hold, as in \"Time=time,T1=air_temperature_f,RH=humidity_pct\""),
                FarmCommand.option(
                        "dates", "ORDER", "readings: day-first or month-first, where the file does not tell"),
                FarmCommand.option(
                        "zone",
                        "ZONE",
                        "readings: time zone of the logger's clock, remembered with its columns; the farm's where never given"),
                FarmCommand.flag("look", "readings: only say how the file would be read"));
    }

    static int run(FarmCommand command) {
        return new ReadingsImport(command).run();
    }

    private int run() {
        if (command.has("look")) {
            return look(said());
        }
        // A folder is made for a file that can be taken, not for one that is refused.
        if (!command.data().hasBook()) {
            switch (LoggerImport.look(file, said(), dates())) {
                case Looked.InDoubt doubt -> {
                    return refused(doubt.questions(), 0);
                }
                case Looked.Seen seen -> needMachine(seen);
            }
        }
        try (var store = command.data().write()) {
            var files = new LoggerFiles(store.readings(), new StoredColumns(store.settings()));
            return switch (files.look(file, said(), dates())) {
                case Looked.InDoubt doubt -> refused(doubt.questions(), 0);
                case Looked.Seen seen -> take(store, files, seen);
            };
        }
    }

    private int look(Optional<LoggerColumns> columns) {
        return switch (LoggerImport.look(file, columns, dates())) {
            case Looked.InDoubt doubt -> refused(doubt.questions(), 0);
            case Looked.Seen seen -> {
                Say.answer(
                        command,
                        Answer.of()
                                .with("columns", seen.columns().text())
                                .with("header_row", seen.headerRow())
                                .with("notes", Value.texts(seen.notes())));
                yield Status.DONE;
            }
        };
    }

    private Optional<LoggerColumns> said() {
        return command.given("columns").map(text -> switch (LoggerColumns.parse(text)) {
            case LoggerColumns.Parsed.Whole(var columns) -> columns;
            case LoggerColumns.Parsed.Wrong(var why) -> throw new Refused("--columns: " + why + " Nothing was done.");
        });
    }

    private Optional<TimeForm> dates() {
        return command.given("dates").map(order -> switch (order) {
            case "day-first" -> TimeForm.DAY_FIRST;
            case "month-first" -> TimeForm.MONTH_FIRST;
            default ->
                throw new Refused(
                        "--dates: \"" + order + "\" is no order. Write day-first or month-first. Nothing was done.");
        });
    }

    private int take(SqliteEntryStore store, LoggerFiles files, Looked.Seen seen) {
        var picture = Ledger.of(store.all()).picture();
        var farms = picture.farm().habits().clock().zoneOr(java.time.ZoneOffset.UTC);
        var into = new LoggerImport.Into(
                place(picture, seen), zone(files.zone(file).orElse(farms)), Instant.now());
        return switch (files.take(file, seen, into, farms)) {
            case TakenFile.Refused(var problems, int beyond) -> refused(problems, beyond);
            case TakenFile.Kept kept -> {
                tell(seen, kept);
                yield Status.DONE;
            }
        };
    }

    /** @param otherwise where none is given */
    private ZoneId zone(ZoneId otherwise) {
        try {
            return command.given("zone").map(ZoneId::of).orElse(otherwise);
        } catch (DateTimeException unknown) {
            throw new Refused("--zone: \"" + command.given("zone").orElse("")
                    + "\" is not a time zone. It looks like America/Chicago or UTC. Nothing was done.");
        }
    }

    /** Empty where the file is to name one in every row. */
    private Optional<ReadingPlace> place(Picture picture, Looked.Seen seen) {
        needMachine(seen);
        var given = command.given("machine");
        if (given.isEmpty()) {
            return Optional.empty();
        }
        var known = picture.machines().keySet().stream().map(MachineName::text).toList();
        var name = given.get();
        if (!known.isEmpty() && !known.contains(name) && !REST.contains(name)) {
            Near.to(name, known)
                    .ifPresentOrElse(
                            near -> {
                                throw new Refused("There is no machine \"" + name + "\". Is it \"" + near
                                        + "\"? Nothing was imported.");
                            },
                            () -> command.err()
                                    .println("There is no machine \"" + name
                                            + "\" in the book yet; its readings wait under that name."));
        }
        return Optional.of(
                switch (name) {
                    case "egg room" -> new ReadingPlace.EggRoom();
                    case "brooder" -> new ReadingPlace.Brooder();
                    default -> new ReadingPlace.InMachine(new MachineName(name));
                });
    }

    private void needMachine(Looked.Seen seen) {
        if (command.given("machine").isEmpty()
                && seen.columns().byName().values().stream()
                        .noneMatch(u -> u.word().equals("machine"))) {
            throw new Refused("Still needed: --machine, for the file names none. Nothing was imported.");
        }
    }

    private void tell(Looked.Seen seen, TakenFile.Kept kept) {
        seen.notes().forEach(note -> command.err().println(note));
        var answer = Answer.of()
                .with("rows", kept.rows())
                .with("new_readings", kept.fresh())
                .with("known_readings", kept.known())
                .with("empty_cells", kept.empty());
        switch (kept.odd()) {
            case TakenFile.Odd.Counted odd ->
                answer = answer.with("held_back", odd.heldBack()).with("gaps", odd.gaps());
            case TakenFile.Odd.NotCounted not ->
                command.err().println("All readings are kept. How many of them are held back could not be counted.");
        }
        Say.answer(
                command,
                answer.with("first_at", kept.first().toString())
                        .with("last_at", kept.last().toString())
                        .with("columns", kept.columns()));
    }

    private int refused(List<Problem> problems, int beyond) {
        problems.forEach(p -> command.err().println(p.words()));
        if (beyond > 0) {
            command.err().println("And " + beyond + " more.");
        }
        command.err().println("Nothing was imported.");
        return Status.WRONG_INPUT;
    }
}
