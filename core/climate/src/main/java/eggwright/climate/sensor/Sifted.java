package eggwright.climate.sensor;

import eggwright.climate.reading.Readings;
import java.util.List;

/**
 * Readings told apart. Together they are what was sifted.
 *
 * @param good those that count
 * @param held those that wait for a person
 */
public record Sifted(Readings good, List<Held> held) {
    public Sifted {
        held = List.copyOf(held);
    }
}
