package eggwright.invented.truth;

import java.time.ZoneId;
import java.util.List;

/**
 * The farm.
 *
 * @param keepers who notes; the first two have a phone each
 */
public record FarmTruth(String name, ZoneId zone, List<String> keepers) {
    /** An invented farm with invented people. */
    public static final FarmTruth PLAIN =
            new FarmTruth("Fallow End", ZoneId.of("America/Chicago"), List.of("Wren", "Alder"));

    public FarmTruth {
        keepers = List.copyOf(keepers);
        if (keepers.isEmpty()) {
            throw new eggwright.units.OutOfRange("keepers is empty; name at least one");
        }
    }
}
