package eggwright.trade.caution;

import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import java.util.EnumMap;
import java.util.Map;

/** The cautions, one for each place of work. */
public final class Cautions {
    private static final Map<Place, Caution> BY_PLACE = read();

    private Cautions() {}

    public static Caution at(Place place) {
        var caution = BY_PLACE.get(place);
        if (caution == null) {
            throw new IllegalStateException("The table of cautions has no line for " + place.word());
        }
        return caution;
    }

    private static Map<Place, Caution> read() {
        var lines =
                CsvTable.beside(Cautions.class, "/eggwright/trade/cautions.csv").rows();
        var cautions = new EnumMap<Place, Caution>(Place.class);
        for (var place : Place.values()) {
            lines.stream()
                    .filter(row -> place.word().equals(row.get("place")))
                    .map(row -> new Caution(
                            place,
                            row.getOrDefault("text", ""),
                            row.getOrDefault("defer_to", ""),
                            Sources.shipped().read(row.getOrDefault("source", ""))))
                    .findFirst()
                    .ifPresent(caution -> cautions.put(place, caution));
        }
        return cautions;
    }
}
