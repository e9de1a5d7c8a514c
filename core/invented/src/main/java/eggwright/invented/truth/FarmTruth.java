package eggwright.invented.truth;

import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import java.time.ZoneId;
import java.util.List;

/**
 * The farm.
 *
 * @param keepers who notes; each has a phone
 */
public record FarmTruth(String name, ZoneId zone, List<String> keepers) {
    /** An invented farm with invented people. */
    public static final FarmTruth PLAIN =
            new FarmTruth("Fallow End", ZoneId.of("America/Chicago"), List.of("Wren", "Alder"));

    public FarmTruth {
        name = new FarmId(name).text();
        keepers = keepers.stream().map(k -> new PersonName(k).text()).toList();
        if (keepers.isEmpty()) {
            throw new eggwright.units.OutOfRange("keepers is empty; name at least one");
        }
        if (keepers.stream().anyMatch(k -> k.contains(","))) {
            throw new eggwright.units.OutOfRange("keepers holds a comma in a name; it parts the names in files");
        }
    }
}
