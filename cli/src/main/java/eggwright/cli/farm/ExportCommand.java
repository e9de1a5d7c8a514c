package eggwright.cli.farm;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.answer.Value;
import eggwright.cli.export.ExportTable;
import eggwright.cli.export.ExportTables;
import eggwright.cli.voice.Status;
import eggwright.sheet.table.TableWriter;
import eggwright.wire.BookLines;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/** The whole book as JSON Lines, or one table as CSV. */
final class ExportCommand {
    private ExportCommand() {}

    static CommandSpec spec() {
        return FarmCommand.of(
                "export",
                "The whole book as JSON Lines, each entry as it was received; or one table as CSV.",
                "eggwright export --table looks > looks.csv",
                ExportCommand::run,
                List.of(FarmCommand.option(
                        "table",
                        "NAME",
                        "one table as CSV (with --json as JSON, one object a line): "
                                + String.join(", ", ExportTables.names()))));
    }

    private static int run(FarmCommand command) {
        var name = command.given("table");
        if (name.isEmpty()) {
            return wholeBook(command);
        }
        var table = ExportTables.named(name.get())
                .orElseThrow(() -> FarmCommands.refused("There is no table \"" + name.get()
                        + "\". Nothing was written. Write one of: " + String.join(", ", ExportTables.names()) + "."));
        var rows = table.rows().apply(FarmCommands.ledger(command));
        if (command.asksForJson()) {
            var json = new JsonAnswers(command.out());
            rows.forEach(json::write);
        } else {
            TableWriter.csv(
                    table.columns(), rows.stream().map(row -> cells(table, row)).toList(), command.out());
        }
        return Status.DONE;
    }

    private static int wholeBook(FarmCommand command) {
        try (var store = command.data().read()) {
            store.eachWritten((kept, written) -> {
                command.out().print(BookLines.write(kept, written));
                command.out().print('\n');
            });
        }
        return Status.DONE;
    }

    private static List<String> cells(ExportTable table, Answer row) {
        var byColumn = new HashMap<String, String>();
        row.fields().forEach(f -> byColumn.put(f.key(), text(f.value())));
        return table.columns().stream()
                .map(column -> byColumn.getOrDefault(column, ""))
                .toList();
    }

    /** Unrounded: another program may read it. */
    private static String text(Value value) {
        return switch (value) {
            case Value.Real(double number) ->
                new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
            case Value.Whole(long number) -> Long.toString(number);
            case Value.Truth(boolean yes) -> Boolean.toString(yes);
            case Value.Text(String text) -> text;
            case Value.Many many -> throw new IllegalStateException("A list in a cell: " + many);
            case Value.Group group -> throw new IllegalStateException("A group in a cell: " + group);
        };
    }
}
