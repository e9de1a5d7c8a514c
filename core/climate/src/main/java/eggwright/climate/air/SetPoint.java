package eggwright.climate.air;

import eggwright.units.Humidity;
import eggwright.units.Temperature;

/** What a machine is taken to have where nobody read it. */
public record SetPoint(Temperature temperature, Humidity humidity) {}
