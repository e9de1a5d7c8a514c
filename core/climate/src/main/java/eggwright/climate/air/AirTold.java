package eggwright.climate.air;

import eggwright.climate.rollup.Rollup;
import java.util.List;

/**
 * What is known of one place's air, in standard units, each list in time order.
 *
 * @param temperatures °C by the hour
 * @param humidities percent by the hour, of hygrometers
 * @param wetBulbs °C by the hour
 * @param notes what was read by hand
 */
public record AirTold(List<Rollup> temperatures, List<Rollup> humidities, List<Rollup> wetBulbs, List<HandRead> notes) {
    public static final AirTold NOTHING = new AirTold(List.of(), List.of(), List.of(), List.of());

    public AirTold {
        temperatures = List.copyOf(temperatures);
        humidities = List.copyOf(humidities);
        wetBulbs = List.copyOf(wetBulbs);
        notes = List.copyOf(notes);
    }
}
