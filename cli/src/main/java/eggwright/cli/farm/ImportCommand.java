package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import eggwright.book.store.EntryStore;
import eggwright.book.store.Outcome;
import eggwright.book.store.Refusal;
import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.cli.voice.Status;
import eggwright.sheet.problem.Problem;
import eggwright.sheet.season.Importing;
import eggwright.sheet.season.SeasonImport;
import eggwright.sheet.season.SeasonRead;
import eggwright.sheet.season.Warning;
import eggwright.sheet.table.Table;
import eggwright.sheet.table.TableRead;
import eggwright.sheet.table.TableReader;
import eggwright.store.SqliteEntryStore;
import eggwright.wire.EntryCodec;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;

/** Reads a season's sheet, or an exported book, into the book, all or nothing. */
final class ImportCommand {
    private static final String SEASON = "season";
    private static final String BOOK = "book";
    private static final String LAMP = "lamp";
    private static final String READINGS = "readings";

    private ImportCommand() {}

    static CommandSpec spec() {
        return FarmCommand.of(
                "import",
                "Reads a file into the book, all or nothing: a season from a spreadsheet, a whole book that export wrote, what a phone at the lamp saved, or what a logger read.",
                "eggwright import season last-year.csv --data farm",
                ImportCommand::run,
                Stream.concat(
                                Stream.of(FarmCommand.option("who", "NAME", "who imports it; import where not given")),
                                ReadingsImport.options().stream())
                        .toList(),
                "KIND",
                "FILE");
    }

    private static int run(FarmCommand command) {
        if (command.word(0).equals(BOOK)) {
            return BookImport.run(command, Path.of(command.word(1)));
        }
        if (command.word(0).equals(LAMP)) {
            return LampImport.run(command, Path.of(command.word(1)));
        }
        if (command.word(0).equals(READINGS)) {
            return ReadingsImport.run(command);
        }
        if (!command.word(0).equals(SEASON)) {
            throw FarmCommands.refused(
                    "\"" + command.word(0)
                            + "\" is not a kind of file that can be imported. Nothing was done. Write season, book, lamp or readings.");
        }
        return switch (TableReader.read(Path.of(command.word(1)))) {
            case TableRead.Refused(var problems, int beyond) -> refused(command, problems, beyond);
            case TableRead.Read(var table) -> season(command, table);
        };
    }

    private static int season(FarmCommand command, Table table) {
        // A folder is made for a file that can be taken, not for one that is refused.
        if (!command.data().hasBook()
                && SeasonImport.read(table, into(command, new FarmId("not yet"), ZoneOffset.UTC), List.of())
                        instanceof SeasonRead.Refused(var problems, int beyond)) {
            return refused(command, problems, beyond);
        }
        try (var store = command.data().write()) {
            var book = store.all();
            var zone = Ledger.of(book).picture().farm().habits().clock().zoneOr(ZoneOffset.UTC);
            return switch (SeasonImport.read(table, into(command, store.farm(), zone), book)) {
                case SeasonRead.Refused(var problems, int beyond) -> refused(command, problems, beyond);
                case SeasonRead.Entries entries -> {
                    int status = keep(command, store, entries);
                    TodayAside.leave(command, command.data(), store);
                    yield status;
                }
            };
        }
    }

    private static Importing into(FarmCommand command, FarmId farm, ZoneId zone) {
        return new Importing(
                farm,
                zone,
                new PersonName(command.given("who").orElse("import")),
                OffsetDateTime.now(zone),
                EntryCodec::write);
    }

    private static int keep(FarmCommand command, SqliteEntryStore store, SeasonRead.Entries entries) {
        return switch (store.appendAll(entries.offered(), Instant.now())) {
            case EntryStore.Batch.NoneKept(var why) -> {
                command.err()
                        .println(
                                "The book did not take the file: " + words(why.getFirst()) + ". Nothing was imported.");
                yield Status.WRONG_INPUT;
            }
            case EntryStore.Batch.AllKept kept -> {
                entries.warnings().forEach(w -> command.err().println(w.words()));
                Say.answer(
                        command,
                        Answer.of()
                                .with("new_rows", entries.newRows())
                                .with("known_rows", entries.knownRows())
                                .with(
                                        "warnings",
                                        Value.texts(entries.warnings().stream()
                                                .map(Warning::words)
                                                .toList())));
                yield Status.DONE;
            }
        };
    }

    /** Says how many entries of a file were new, or why the book took none. */
    static int kept(FarmCommand command, SqliteEntryStore store, EntryStore.Batch batch) {
        int status = say(command, batch);
        TodayAside.leave(command, command.data(), store);
        return status;
    }

    private static int say(FarmCommand command, EntryStore.Batch batch) {
        return switch (batch) {
            case EntryStore.Batch.NoneKept(var why) -> {
                command.err()
                        .println(
                                "The book did not take the file: " + words(why.getFirst()) + ". Nothing was imported.");
                yield Status.WRONG_INPUT;
            }
            case EntryStore.Batch.AllKept(var outcomes) -> {
                long fresh = outcomes.stream()
                        .filter(Outcome.Added.class::isInstance)
                        .count();
                Say.answer(
                        command, Answer.of().with("new_entries", fresh).with("known_entries", outcomes.size() - fresh));
                yield Status.DONE;
            }
        };
    }

    private static String words(Refusal why) {
        return switch (why) {
            case Refusal.OtherContent it -> "an entry of " + it.inTheBook().happened() + " is in it with other content";
            case Refusal.OtherFarm it -> "it is the book of " + it.ours();
            case Refusal.NotSaved it -> it.reason();
        };
    }

    private static int refused(FarmCommand command, List<Problem> problems, int beyond) {
        problems.forEach(p -> command.err().println(p.words()));
        if (beyond > 0) {
            command.err().println("And " + beyond + " more.");
        }
        command.err().println("Nothing was imported. Mend the file, then import it again.");
        return Status.WRONG_INPUT;
    }
}
