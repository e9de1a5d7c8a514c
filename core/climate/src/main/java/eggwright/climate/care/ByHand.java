package eggwright.climate.care;

import java.time.Instant;

/**
 * A sensor and a keeper who read the same air at the same time.
 *
 * @param read by the sensor, the middle of a half hour, in its own unit and uncorrected
 * @param corrected the same in standard units, as corrected
 * @param hand what the keeper noted, in standard units
 */
public record ByHand(Instant at, double read, double corrected, double hand) {}
