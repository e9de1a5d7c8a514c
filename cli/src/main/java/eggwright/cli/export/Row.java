package eggwright.cli.export;

import eggwright.book.entry.Payload;
import eggwright.book.entry.Scope;
import eggwright.book.fold.Effective;
import eggwright.book.fold.Ledger;
import eggwright.book.name.Name;
import eggwright.cli.answer.Answer;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A row on its way: what was not recorded is left out. */
final class Row {
    private Answer answer = Answer.of();

    private Row() {}

    static Row empty() {
        return new Row();
    }

    /** Begun with when it happened and who noted it. */
    static Row of(Effective entry) {
        return new Row().text("happened", entry.at()).text("who", entry.entry().who());
    }

    /** Columns of a table of entries: when and who first, the entry's id last. */
    static List<String> columns(Stream<String> own) {
        var all = new ArrayList<String>(List.of("happened", "who"));
        own.forEach(all::add);
        all.add("id");
        return all;
    }

    /** A table with a row for each entry of one kind, as it counts after mends. */
    static <P extends Payload> ExportTable entries(
            String name, List<String> columns, Class<P> kind, BiFunction<Row, P, Row> row) {
        return new ExportTable(
                name,
                columns(columns.stream()),
                ledger -> each(
                        ledger,
                        entry -> kind.isInstance(entry.payload())
                                ? List.of(row.apply(of(entry), kind.cast(entry.payload()))
                                        .done(entry))
                                : List.of()));
    }

    static List<Answer> each(Ledger ledger, Function<Effective, List<Answer>> rows) {
        return ledger.inOrder().stream().flatMap(e -> rows.apply(e).stream()).toList();
    }

    Row text(String column, @Nullable Object value) {
        if (value != null) {
            var text = switch (value) {
                case Name name -> name.text();
                case Species species -> species.word();
                case Enum<?> word -> word.name().toLowerCase(Locale.ROOT);
                default -> value.toString();
            };
            if (!text.isEmpty()) {
                answer = answer.with(column, text);
            }
        }
        return this;
    }

    Row whole(String column, @Nullable Integer value) {
        if (value != null) {
            answer = answer.with(column, (long) value);
        }
        return this;
    }

    Row real(String column, @Nullable Double value) {
        if (value != null) {
            answer = answer.with(column, (double) value);
        }
        return this;
    }

    /** Which eggs a count speaks of. */
    Row scope(Scope scope) {
        return text("set", scope.set())
                .text("tray", scope.tray())
                .text("pen", scope.pen())
                .text("basket", scope.basket());
    }

    Answer done() {
        return answer;
    }

    Answer done(Effective entry) {
        return text("id", entry.id()).done();
    }
}
