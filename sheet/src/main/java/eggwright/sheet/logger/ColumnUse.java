package eggwright.sheet.logger;

import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a column of a logger's file holds. Its word is how a person says so. */
public sealed interface ColumnUse {
    /** When it was read: a date with a time of day, or seconds or milliseconds since 1970. */
    record Time() implements ColumnUse {}

    /** The date alone; the time of day stands in a column of its own. */
    record Date() implements ColumnUse {}

    /** The time of day alone. */
    record Clock() implements ColumnUse {}

    /** A reading. */
    record Value(Quantity quantity, ReadingUnit unit) implements ColumnUse {}

    /** The machine that the row is of. */
    record Machine() implements ColumnUse {}

    /** The sensor that the row is of. */
    record Sensor() implements ColumnUse {}

    /** Of no use here. */
    record Left() implements ColumnUse {}

    default String word() {
        return switch (this) {
            case Time() -> "time";
            case Date() -> "date";
            case Clock() -> "clock";
            case Machine() -> "machine";
            case Sensor() -> "sensor";
            case Left() -> "left";
            case Value(var quantity, var unit) -> quantity.word() + "_" + unit.suffix();
        };
    }

    static Optional<ColumnUse> ofWord(String word) {
        return switch (word) {
            case "time" -> Optional.of(new Time());
            case "date" -> Optional.of(new Date());
            case "clock" -> Optional.of(new Clock());
            case "machine" -> Optional.of(new Machine());
            case "sensor" -> Optional.of(new Sensor());
            case "left" -> Optional.of(new Left());
            default -> value(word);
        };
    }

    private static Optional<ColumnUse> value(String word) {
        int cut = word.lastIndexOf('_');
        if (cut < 0) {
            return Optional.empty();
        }
        return Quantity.ofWord(word.substring(0, cut))
                .flatMap(quantity -> ReadingUnit.ofSuffix(word.substring(cut + 1))
                        .filter(ReadingUnit.of(quantity)::contains)
                        .map(unit -> new Value(quantity, unit)));
    }

    /** All that a column can hold, in the order in which they are offered. */
    static List<ColumnUse> all() {
        var all = new ArrayList<ColumnUse>(List.of(new Time(), new Date(), new Clock()));
        for (var quantity : Quantity.values()) {
            for (var unit : ReadingUnit.of(quantity)) {
                all.add(new Value(quantity, unit));
            }
        }
        all.addAll(List.of(new Machine(), new Sensor(), new Left()));
        return List.copyOf(all);
    }

    /** Every word there is, for messages. */
    static String words() {
        return all().stream().map(ColumnUse::word).collect(Collectors.joining(", "));
    }
}
