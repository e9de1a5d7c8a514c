package eggwright.climate.air;

import eggwright.egg.air.MoistAir;
import java.time.Instant;

/**
 * Air over a stretch of time, mostly an hour.
 *
 * @param warmth how its temperature is known
 * @param wetness how its humidity is known
 */
public record AirHour(Instant from, Instant to, MoistAir air, KnownBy warmth, KnownBy wetness) {}
