package eggwright.egg.air;

import eggwright.units.Humidity;
import eggwright.units.OutOfRange;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.Optional;

/**
 * Air with the vapour in it, at one temperature and air pressure.
 *
 * <p>Range: 0 to 60 °C, 30 to 120 kPa. The pressure is that of the place (the barometer as it stands there, or the
 * {@link StandardAtmosphere} of its altitude), not the one that a forecast has reduced to sea level.
 *
 * @param temperature of the air: the dry bulb
 * @param vapour pressure of the vapour, from none to saturation
 * @param barometer pressure of the air
 */
public record MoistAir(Temperature temperature, Pressure vapour, Pressure barometer) {
    /** Coldest air that is spoken of here, in °C. */
    public static final double COLDEST_CELSIUS = 0;

    /** Hottest air that is spoken of here, in °C. */
    public static final double HOTTEST_CELSIUS = 60;

    /** About the pressure at 9,000 m, in kPa: lower is a slip of the pen. */
    public static final double THINNEST_KPA = 30;

    /** Above any barometer, in kPa. */
    public static final double DENSEST_KPA = 120;

    /** Molar mass of water over the gas constant, g K/J: 18.01528/8.314463 (CODATA 2018). */
    private static final double GRAM_KELVIN_PER_JOULE = 2.16674;

    /** Molar masses of water and dry air, one over the other. */
    private static final double WATER_TO_DRY_AIR = 0.621945;

    private static final double PASCALS = 1000;

    /** What two conversions between Fahrenheit and Celsius may leave over. */
    private static final double ROUNDING = 1e-9;

    /**
     * @throws OutOfRange if the temperature or the pressure is outside the range, or the vapour above saturation
     */
    public MoistAir {
        OutOfRange.check("Air temperature", temperature.celsius(), COLDEST_CELSIUS, HOTTEST_CELSIUS, "°C");
        Psychrometer.checked(barometer);
        double most = Saturation.kilopascals(temperature.celsius());
        if (!(vapour.kilopascals() <= most * (1 + ROUNDING))) {
            throw new OutOfRange("Air at " + temperature + " holds at most " + most + " kPa of vapour, not "
                    + vapour.kilopascals() + " kPa");
        }
    }

    /** Air of a known relative humidity. */
    public static MoistAir of(Temperature temperature, Humidity humidity, Pressure barometer) {
        OutOfRange.check("Air temperature", temperature.celsius(), COLDEST_CELSIUS, HOTTEST_CELSIUS, "°C");
        double saturation = Saturation.kilopascals(temperature.celsius());
        return new MoistAir(temperature, Pressure.ofKilopascals(humidity.share() * saturation), barometer);
    }

    /**
     * Air read with two thermometers.
     *
     * @throws OutOfRange if the wet bulb is above the dry one or frozen, or so far below it that no air can show it
     */
    public static MoistAir ofWetBulb(Temperature dry, Temperature wet, Pressure barometer, Ventilation ventilation) {
        OutOfRange.check("Dry bulb", dry.celsius(), COLDEST_CELSIUS, HOTTEST_CELSIUS, "°C");
        Psychrometer.checked(barometer);
        if (!(wet.celsius() <= dry.celsius() + ROUNDING)) {
            throw new OutOfRange("The wet bulb, " + wet + ", is above the dry bulb, " + dry
                    + ". Water that evaporates cools; look whether the two are swapped, or the wick is dry");
        }
        if (!(wet.celsius() >= 0)) {
            throw new OutOfRange("The wet bulb, " + wet + ", is below freezing, where the equation does not hold");
        }
        double vapour = Psychrometer.vapourKilopascals(
                dry.celsius(), Math.min(wet.celsius(), dry.celsius()), barometer.kilopascals(), ventilation);
        if (!(vapour >= 0)) {
            throw new OutOfRange("No air at " + dry + " can show a wet bulb of " + wet
                    + ", not even air without any water. Look at both thermometers again");
        }
        return new MoistAir(dry, Pressure.ofKilopascals(vapour), barometer);
    }

    /** Vapour pressure that this air would have if it were saturated. */
    public Pressure saturation() {
        return Saturation.over(temperature);
    }

    /** Relative humidity, over water. */
    public Humidity humidity() {
        return new Humidity(
                Math.min(100, 100 * vapour.kilopascals() / saturation().kilopascals()));
    }

    /** Temperature to which this air may cool before dew falls; empty where that is below -50 °C. */
    public Optional<Temperature> dewPoint() {
        return Saturation.dewPoint(vapour);
    }

    /**
     * What a wet bulb shows in this air.
     *
     * @throws OutOfRange if its wick would freeze
     */
    public Temperature wetBulb(Ventilation ventilation) {
        return Temperature.ofCelsius(Psychrometer.wetBulbCelsius(
                temperature.celsius(), vapour.kilopascals(), barometer.kilopascals(), ventilation));
    }

    /** Grams of water in a cubic metre: 2.16674 e/T with e in Pa and T in K (ideal gas). */
    public double absoluteHumidityGramsPerCubicMetre() {
        return GRAM_KELVIN_PER_JOULE * PASCALS * vapour.kilopascals() / temperature.kelvin();
    }

    /** Grams of water with each kilogram of dry air: 0.621945 e/(P - e), times 1000. */
    public double humidityRatioGramsPerKilogram() {
        return PASCALS * WATER_TO_DRY_AIR * vapour.kilopascals() / (barometer.kilopascals() - vapour.kilopascals());
    }

    /**
     * The same air warmed or cooled, as room air is when it is drawn into a machine: it keeps its vapour.
     *
     * @throws OutOfRange if it would be cooled below its dew point
     */
    public MoistAir at(Temperature other) {
        return new MoistAir(other, vapour, barometer);
    }
}
