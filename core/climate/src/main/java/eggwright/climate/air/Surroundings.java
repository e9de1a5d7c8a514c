package eggwright.climate.air;

import eggwright.egg.air.Ventilation;
import eggwright.units.Pressure;

/**
 * What the farm's instruments stand in.
 *
 * @param barometer of the place, from its altitude or read there
 * @param ventilation of the wet bulbs
 */
public record Surroundings(Pressure barometer, Ventilation ventilation) {}
