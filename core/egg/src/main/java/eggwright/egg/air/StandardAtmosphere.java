package eggwright.egg.air;

import eggwright.units.Altitude;
import eggwright.units.Pressure;
import eggwright.units.Temperature;

/**
 * The middle of all weather: pressure and temperature of the air at an altitude.
 *
 * <p>Source: ISO 2533:1975 (the same air as ICAO's), troposphere; its table was read. Error: within 0.01 % of the table,
 * as {@code StandardAtmosphereReferenceTest} checks. Weather moves the pressure by up to 3 % either way, so a barometer
 * at the place is better.
 *
 * @param pressure of the air
 * @param temperature of the air
 */
public record StandardAtmosphere(Pressure pressure, Temperature temperature) {
    private static final double SEA_LEVEL_CELSIUS = 15;
    private static final double COOLING_PER_METRE = 0.0065;

    /** g0 M/(R L) with ISO's constants: 9.80665/(287.05287 x 0.0065). */
    private static final double EXPONENT = 9.80665 / (287.05287 * COOLING_PER_METRE);

    /** The earth's radius that ISO 2533 takes, in metres. */
    private static final double EARTH_METRES = 6_356_766;

    /** At a height as a map gives it. */
    public static StandardAtmosphere at(Altitude altitude) {
        return atGeopotentialMetres(geopotentialMetres(altitude));
    }

    /**
     * At a height of equal work against gravity, as tables of the atmosphere give it beside the map's height.
     *
     * @param metres from -2,000 to 11,000
     */
    static StandardAtmosphere atGeopotentialMetres(double metres) {
        double seaLevelKelvin = SEA_LEVEL_CELSIUS + Temperature.ZERO_CELSIUS_KELVIN;
        double kelvin = seaLevelKelvin - COOLING_PER_METRE * metres;
        double pressure = Pressure.SEA_LEVEL.kilopascals() * Math.pow(kelvin / seaLevelKelvin, EXPONENT);
        return new StandardAtmosphere(
                Pressure.ofKilopascals(pressure),
                Temperature.ofCelsius(SEA_LEVEL_CELSIUS - COOLING_PER_METRE * metres));
    }

    /** Geopotential height of a map's height: a third of a metre less at 1,500 m. */
    static double geopotentialMetres(Altitude altitude) {
        return EARTH_METRES * altitude.metres() / (EARTH_METRES + altitude.metres());
    }
}
