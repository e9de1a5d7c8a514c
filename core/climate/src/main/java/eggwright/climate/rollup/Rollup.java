package eggwright.climate.rollup;

import java.time.Duration;
import java.time.Instant;

/**
 * The readings of one stretch of time, in standard units (°C, %, hPa), corrected by the sensor's calibration.
 *
 * @param from where the stretch begins
 * @param to where it ends
 * @param count readings in it, at least 1
 * @param mean of the readings, each counting once
 * @param known for how much of it readings speak; a reading speaks until the next, or until the longest step that is no gap
 * @param outside for how much of that they were outside the band; nothing where there is no band
 */
public record Rollup(
        Instant from, Instant to, int count, double min, double mean, double max, Duration known, Duration outside) {}
