package eggwright.cli.farm;

import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.voice.Status;
import eggwright.rates.Dimension;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/** Fertility, hatch and losses by what the user asks for. */
final class ReportCommand {
    private ReportCommand() {}

    static CommandSpec spec() {
        return FarmCommand.of(
                "report",
                "Fertility, hatch and losses, with counts, 95 % intervals, and whether a difference is luck.",
                "eggwright report --by pen",
                ReportCommand::run,
                List.of(FarmCommand.option("by", "WHAT", words())));
    }

    private static String words() {
        return Arrays.stream(Dimension.values()).map(Dimension::word).collect(Collectors.joining(", "));
    }

    private static int run(FarmCommand command) {
        var word = command.given("by").orElse("pen");
        var by = Arrays.stream(Dimension.values())
                .filter(d -> d.word().equals(word))
                .findFirst()
                .orElseThrow(() ->
                        FarmCommands.refused("--by \"" + word + "\" is not one of " + words() + ". Nothing was done."));
        var report = Reported.of(FarmCommands.ledger(command).picture(), by);
        if (command.asksForJson()) {
            new JsonAnswers(command.out()).write(ReportJson.of(report));
        } else {
            new ReportTables(command.out(), report).write();
        }
        return Status.DONE;
    }
}
