package eggwright.cli.answer;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * Writes an answer that holds others: the single values first, then each answer within, and each list of answers as a
 * table, under its name.
 */
public final class ListedAnswers {
    private ListedAnswers() {}

    /** Writes it. */
    public static void write(PrintWriter out, Answer answer) {
        TableAnswers.write(
                out,
                new Answer(answer.fields().stream()
                        .filter(field -> rows(field.value()).isEmpty() && !(field.value() instanceof Value.Group))
                        .toList()));
        for (var field : answer.fields()) {
            if (field.value() instanceof Value.Group(Answer inner)) {
                out.println();
                out.println(field.key().replace('_', ' '));
                TableAnswers.write(out, inner);
            }
            var rows = rows(field.value());
            if (!rows.isEmpty()) {
                table(out, field.key().replace('_', ' '), rows);
            }
        }
    }

    private static List<Answer> rows(Value value) {
        return value instanceof Value.Many(List<Value> values)
                ? values.stream()
                        .filter(Value.Group.class::isInstance)
                        .map(each -> ((Value.Group) each).answer())
                        .toList()
                : List.of();
    }

    /** A table; lists within its rows become tables of their own below, named after the row's first cell. */
    private static void table(PrintWriter out, String title, List<Answer> rows) {
        var keys = new LinkedHashSet<String>();
        for (var row : rows) {
            for (var field : row.fields()) {
                if (rows(field.value()).isEmpty()) {
                    keys.add(field.key());
                }
            }
        }
        var headings = List.copyOf(keys);
        var cells = new ArrayList<List<String>>();
        for (var row : rows) {
            cells.add(headings.stream().map(key -> cell(row, key)).toList());
        }
        out.println();
        out.println(title);
        TableAnswers.table(
                out, headings.stream().map(key -> key.replace('_', ' ')).toList(), cells);
        for (var row : rows) {
            for (var field : row.fields()) {
                var inner = rows(field.value());
                if (!inner.isEmpty()) {
                    table(
                            out,
                            cell(row, headings.getFirst()) + ": " + field.key().replace('_', ' '),
                            inner);
                }
            }
        }
    }

    private static String cell(Answer row, String key) {
        return row.fields().stream()
                .filter(field -> field.key().equals(key))
                .map(field -> Shown.text(field.value()))
                .findFirst()
                .orElse("");
    }
}
