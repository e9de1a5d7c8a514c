package eggwright.cli.farm;

import eggwright.book.store.EntryStore;
import eggwright.cli.answer.Answer;
import eggwright.cli.voice.Status;
import eggwright.invented.season.Season;
import eggwright.invented.truth.ShippedTruths;
import eggwright.invented.truth.Truth;
import eggwright.invented.truth.TruthReading;
import eggwright.invented.truth.TruthText;
import eggwright.store.DataFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/** Seasons of the invented farm with a given truth and seed. */
final class SimulateCommand {
    private SimulateCommand() {}

    static CommandSpec spec() {
        return FarmCommand.of(
                "simulate",
                "A season of the invented farm with a given truth and seed: a book, and the truth beside it.",
                "eggwright simulate --truth default --seed 7 --out season-7",
                SimulateCommand::run,
                List.of(
                        FarmCommand.option(
                                "truth",
                                "FILE",
                                "a truth in a file, or one of " + String.join(", ", ShippedTruths.names())),
                        FarmCommand.option("seed", "N", "a whole number; the same seed gives the same season"),
                        FarmCommand.option("from", "DAY", "day of the first egg; 2027-03-22 where not given"),
                        FarmCommand.option("until", "DAY", "only what was noted before this day; all where not given"),
                        FarmCommand.option("out", "DIR", "an empty folder")));
    }

    private static int run(FarmCommand command) {
        var name = command.given("truth").orElse("default");
        var truth = truth(name);
        var seed = command.given("seed").orElse("1");
        if (!seed.matches("-?\\d{1,18}")) {
            throw FarmCommands.refused("--seed \"" + seed + "\" is not a whole number. Nothing was done.");
        }
        var folder = Path.of(command.needed("out"));
        var data = DataFolder.at(folder);
        if (data.hasBook()) {
            throw FarmCommands.refused(
                    "There is a book in " + folder + " already. Nothing was changed. Name an empty folder.");
        }
        var season = Season.of(truth, Long.parseLong(seed), day(command, "from", "2027-03-22"));
        if (command.given("until").isPresent()) {
            season = season.until(
                    day(command, "until", "").atStartOfDay(truth.farm().zone()).toInstant());
        }
        try (var store = data.write(season.farm())) {
            if (store.bringIn(season.entries()) instanceof EntryStore.Batch.NoneKept(var why)) {
                throw FarmCommands.refused("The season could not be kept: " + why.getFirst() + ".");
            }
            Files.writeString(folder.resolve("season.truth"), TruthText.write(truth));
            Say.answer(
                    command,
                    Answer.of()
                            .with("entries", season.entries().size())
                            .with("eggs_set", season.answers().eggs().count())
                            .with(
                                    "saleable",
                                    season.answers().saleable().values().stream()
                                            .mapToInt(Integer::intValue)
                                            .sum())
                            .with("out", folder.toString()));
            TodayAside.leave(command, data, store);
        } catch (IOException refused) {
            throw FarmCommands.refused(
                    "The truth could not be written beside the book (" + refused.getMessage() + ").");
        }
        return Status.DONE;
    }

    private static LocalDate day(FarmCommand command, String option, String otherwise) {
        var day = command.given(option).orElse(otherwise);
        try {
            return LocalDate.parse(day);
        } catch (DateTimeException notADay) {
            throw FarmCommands.refused(
                    "--" + option + " \"" + day + "\" is not a day. Nothing was done. Write it as 2027-03-22.");
        }
    }

    private static Truth truth(String name) {
        var text = ShippedTruths.text(name).orElseGet(() -> {
            try {
                return Files.readString(Path.of(name));
            } catch (IOException missing) {
                throw FarmCommands.refused(
                        "There is no truth in " + name + ". Nothing was done. Name a file, or one of "
                                + String.join(", ", ShippedTruths.names()) + ".");
            }
        });
        return switch (TruthText.read(text)) {
            case TruthReading.Read(var truth) -> truth;
            case TruthReading.Refused(var reasons) ->
                throw FarmCommands.refused(name + ": " + String.join(" ", reasons) + " Nothing was done.");
        };
    }
}
