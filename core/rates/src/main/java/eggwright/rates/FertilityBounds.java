package eggwright.rates;

import eggwright.units.Rate;

/**
 * How low and how high fertility can be, given eggs whose fertility nobody saw: all of them infertile, or all fertile.
 * Eggs that may belong to the group or to others, for they were counted together, count against the low end.
 */
public record FertilityBounds(Rate low, Rate high) {}
