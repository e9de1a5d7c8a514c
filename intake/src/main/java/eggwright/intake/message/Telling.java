package eggwright.intake.message;

import java.time.Instant;
import java.util.Optional;

/**
 * One reading as a sensor sent it.
 *
 * @param value in the sensor's unit
 * @param at empty where the sensor has no clock
 */
record Telling(double value, Optional<Instant> at) {}
