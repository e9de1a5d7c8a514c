package eggwright.climate.weight;

import java.time.Instant;

/**
 * What an egg weighed on the mean.
 *
 * @param grams a egg, tray taken off
 * @param errorGrams standard error of it, of the scale and of which eggs were still in
 * @param eggs on the scale
 */
public record MeanMass(Instant at, double grams, double errorGrams, int eggs) {}
