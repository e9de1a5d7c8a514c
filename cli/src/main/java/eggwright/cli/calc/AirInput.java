package eggwright.cli.calc;

import eggwright.egg.air.MoistAir;
import eggwright.egg.air.StandardAtmosphere;
import eggwright.egg.air.Ventilation;
import eggwright.units.Altitude;
import eggwright.units.Humidity;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads what calculations say of air: temperatures, humidity, altitude or barometer, a fan or none. */
final class AirInput {
    static final String ALTITUDE = "altitude";
    static final String PRESSURE = "pressure";
    static final String STILL = "still";
    static final String HUMIDITY = "humidity";

    private static final double LOWEST_KPA = 50;
    private static final double HIGHEST_KPA = 115;

    private AirInput() {}

    /** These inputs, and after them where the place lies. */
    static List<Input> withPlace(Input... inputs) {
        return Stream.concat(
                        Stream.of(inputs),
                        Stream.of(
                                Input.optional(
                                        ALTITUDE, "HEIGHT", "height above the sea as a map gives it, as 300m or 984ft"),
                                Input.optional(
                                        PRESSURE,
                                        "PRESSURE",
                                        "instead of the altitude: the barometer as it stands at the place, as 100.1kPa,"
                                                + " 1001hPa, 1001mbar, 29.6inHg or 751mmHg; sea level where neither is"
                                                + " said")))
                .toList();
    }

    /** These inputs, where the place lies, and whether a fan moves the air. */
    static List<Input> withPlaceAndFan(Input... inputs) {
        return Stream.concat(
                        withPlace(inputs).stream(),
                        Stream.of(Input.saidOrNot(
                                STILL, "the wick hangs in a machine without a fan: coefficient 8.0e-4, not 6.62e-4")))
                .toList();
    }

    static Ventilation ventilation(Given given) {
        return given.isSaid(STILL) ? Ventilation.STILL : Ventilation.ASPIRATED;
    }

    static Humidity humidity(Given given) {
        return given.neededQuantity(HUMIDITY, Humidity::parse);
    }

    /** A temperature of air or of an egg; asks where Fahrenheit was typed as Celsius. */
    static Temperature temperature(Given given, String input) {
        given.needed(input);
        return optionalTemperature(given, input).orElseThrow();
    }

    static Optional<Temperature> optionalTemperature(Given given, String input) {
        var typed = given.quantity(input, Temperature::parse);
        typed.ifPresent(temperature -> check(given, input, temperature));
        return typed;
    }

    private static void check(Given given, String input, Temperature temperature) {
        double celsius = temperature.celsius();
        if (celsius > MoistAir.HOTTEST_CELSIUS && temperature.scale() == Temperature.Scale.CELSIUS) {
            var meant = Temperature.ofFahrenheit(temperature.number());
            throw given.wrong(
                    input,
                    temperature + " is hotter than any machine. Fahrenheit? Then write " + meant + ", which is "
                            + tenth(meant.celsius()) + "C.");
        }
        if (!(celsius >= MoistAir.COLDEST_CELSIUS && celsius <= MoistAir.HOTTEST_CELSIUS)) {
            throw given.wrong(
                    input,
                    temperature + " is outside " + tenth(MoistAir.COLDEST_CELSIUS) + "C to "
                            + tenth(MoistAir.HOTTEST_CELSIUS) + "C (32F to 140F), for which the formula is made.");
        }
    }

    /** The pressure of the air: from the barometer, the altitude, or that of sea level. */
    static Pressure barometer(Given given) {
        var altitude = given.quantity(ALTITUDE, Altitude::parse);
        var pressure = given.quantity(PRESSURE, Pressure::parse);
        if (altitude.isPresent() && pressure.isPresent()) {
            throw given.wrong(
                    PRESSURE, "an altitude is given too. Give one of them; a barometer at the place is the better.");
        }
        pressure.ifPresent(typed -> {
            if (!(typed.kilopascals() >= LOWEST_KPA && typed.kilopascals() <= HIGHEST_KPA)) {
                throw given.wrong(
                        PRESSURE,
                        typed + " is " + tenth(typed.kilopascals())
                                + " kPa, and no farm has that: a barometer stands between 50 and 115 kPa"
                                + " (500 and 1150 hPa, 14.8 and 34 inHg). Look at the unit.");
            }
        });
        return pressure.or(() ->
                        altitude.map(height -> StandardAtmosphere.at(height).pressure()))
                .orElse(Pressure.SEA_LEVEL);
    }

    private static double tenth(double number) {
        return Math.round(number * 10) / 10.0;
    }
}
