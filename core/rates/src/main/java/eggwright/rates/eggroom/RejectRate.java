package eggwright.rates.eggroom;

import eggwright.units.Rate;

/**
 * Rejected of gathered.
 *
 * @param pen as entered; {@link eggwright.rates.Dimension#NOT_RECORDED} where pens are not kept apart, {@link
 *     eggwright.rates.Dimension#ALL} for all pens
 * @param week ISO 8601 week of the last lay date; {@link eggwright.rates.Dimension#ALL} for all weeks
 * @param rejected of all that were gathered, kept and rejected
 */
public record RejectRate(String pen, String week, Rate rejected) {}
