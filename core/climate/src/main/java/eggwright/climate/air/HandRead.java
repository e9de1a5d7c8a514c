package eggwright.climate.air;

import eggwright.units.Humidity;
import eggwright.units.Temperature;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Thermometers read by hand.
 *
 * @param dry absent where not read
 * @param wet absent where not read
 * @param humidity absent where there is no hygrometer
 */
public record HandRead(
        Instant at,
        @Nullable Temperature dry,
        @Nullable Temperature wet,
        @Nullable Humidity humidity) {}
