package eggwright.cli.export;

import eggwright.book.fold.Ledger;
import eggwright.cli.answer.Answer;
import java.util.List;
import java.util.function.Function;

/**
 * One table of the book.
 *
 * @param name as typed after {@code --table}
 * @param columns in the order written; units stand in their names
 * @param rows a row holds what was recorded, by column; a column that is left out was not
 */
public record ExportTable(String name, List<String> columns, Function<Ledger, List<Answer>> rows) {
    public ExportTable {
        columns = List.copyOf(columns);
    }
}
