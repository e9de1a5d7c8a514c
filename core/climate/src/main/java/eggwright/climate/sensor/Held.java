package eggwright.climate.sensor;

import java.time.Instant;

/**
 * A reading that is held back.
 *
 * @param value in the channel's own unit, as it came
 */
public record Held(Instant at, double value, Doubt why) {}
