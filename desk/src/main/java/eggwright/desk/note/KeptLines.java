package eggwright.desk.note;

import eggwright.desk.form.Field;
import java.util.ArrayList;
import java.util.List;

/** A filled field as lines to read: only what was typed or chosen. */
final class KeptLines {
    private KeptLines() {}

    static List<KeptPage.Line> of(Field field) {
        return switch (field) {
            case Field.Line line ->
                line.value().isBlank() ? List.of() : List.of(new KeptPage.Line(line.label(), shown(line)));
            case Field.Choice choice ->
                choice.options().stream()
                        .filter(o ->
                                o.value().equals(choice.value()) && !o.value().isEmpty())
                        .map(o -> new KeptPage.Line(choice.label(), o.label()))
                        .toList();
            case Field.Fold fold ->
                fold.fields().stream().flatMap(f -> of(f).stream()).toList();
            case Field.Rows rows -> rows(rows);
        };
    }

    /** With its unit, or with the buyer's name. */
    private static String shown(Field.Line line) {
        var words = line.name().equals("buyer") ? named(line) : "";
        return line.unit().isEmpty() ? line.value() + words : line.value() + "\u00a0" + line.unit();
    }

    private static String named(Field.Line line) {
        return line.offers().stream()
                .filter(o -> o.value().equals(line.value()))
                .map(o -> " (" + o.label() + ")")
                .findFirst()
                .orElse("");
    }

    private static List<KeptPage.Line> rows(Field.Rows rows) {
        var lines = new ArrayList<KeptPage.Line>();
        int number = 0;
        for (var row : rows.rows()) {
            number++;
            var parts = new ArrayList<String>();
            for (var field : row) {
                for (var line : of(field)) {
                    parts.add(line.label() + " " + line.value());
                }
            }
            if (!parts.isEmpty()) {
                lines.add(new KeptPage.Line(rows.rowLabel() + " " + number, String.join(", ", parts)));
            }
        }
        return lines;
    }
}
