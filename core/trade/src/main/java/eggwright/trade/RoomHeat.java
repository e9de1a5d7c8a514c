package eggwright.trade;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;
import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import eggwright.units.OutOfRange;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How warm the trade keeps the rooms about the machines.
 *
 * @param lowCelsius least
 * @param highCelsius greatest; the same as the least where one figure is given
 */
public record RoomHeat(double lowCelsius, double highCelsius, String note) {
    private record Row(String place, double dayFrom, double dayTo, Sourced<RoomHeat> heat) {}

    private static final List<Row> SHIPPED = read();

    public RoomHeat {
        OutOfRange.check("Least heat of a room", lowCelsius, -10, 50, "°C");
        OutOfRange.check("Greatest heat of a room", highCelsius, lowCelsius, 50, "°C");
    }

    /** Where eggs wait to be set. */
    public static Sourced<RoomHeat> ofEggRoom() {
        return SHIPPED.stream()
                .filter(row -> row.place().equals("egg_room"))
                .findFirst()
                .orElseThrow()
                .heat();
    }

    /**
     * At the height of chicks of an age; empty where they are off heat.
     *
     * @param days since the hatch, from 0
     */
    public static Optional<Sourced<RoomHeat>> ofBrooder(double days) {
        return SHIPPED.stream()
                .filter(row -> row.place().equals("brooder") && days >= row.dayFrom() && days < row.dayTo())
                .findFirst()
                .map(Row::heat);
    }

    private static List<Row> read() {
        return CsvTable.beside(RoomHeat.class, "rooms.csv").rows().stream()
                .map(row -> new Row(
                        row.getOrDefault("place", ""),
                        number(row, "day_from", 0),
                        number(row, "day_to", Double.POSITIVE_INFINITY),
                        new Sourced<>(
                                new RoomHeat(
                                        number(row, "celsius_low", Double.NaN),
                                        number(row, "celsius_high", Double.NaN),
                                        row.getOrDefault("note", "")),
                                source(row.getOrDefault("source", "")))))
                .toList();
    }

    private static double number(Map<String, String> row, String column, double absent) {
        var text = row.getOrDefault(column, "");
        return text.isEmpty() ? absent : Double.parseDouble(text);
    }

    private static Source source(String key) {
        return key.equals("MEMORY")
                ? new Source.FromMemory()
                : Sources.shipped().named(key).orElseThrow();
    }
}
