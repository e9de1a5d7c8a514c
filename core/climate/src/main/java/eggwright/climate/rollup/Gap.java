package eggwright.climate.rollup;

import java.time.Instant;

/** From the last reading before a silence to the first after it. */
public record Gap(Instant from, Instant to) {}
