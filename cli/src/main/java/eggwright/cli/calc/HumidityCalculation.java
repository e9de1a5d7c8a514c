package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.egg.air.MoistAir;
import eggwright.units.Temperature;
import java.util.List;

/** What two thermometers say of the air. */
final class HumidityCalculation implements Calculation {
    @Override
    public String name() {
        return "humidity";
    }

    @Override
    public String about() {
        return "What a dry and a wet bulb say: relative humidity, vapour pressure, dew point, water in the air."
                + " The wick has to be clean and wet; a dirty one reads too high.";
    }

    @Override
    public String example() {
        return "eggwright calc humidity --dry 99.5F --wet 86F --altitude 300m";
    }

    @Override
    public List<Input> inputs() {
        return AirInput.withPlaceAndFan(
                Input.needed("dry", "TEMPERATURE", "the dry bulb, as 99.5F, 37.5C or 310.65K"),
                Input.needed("wet", "TEMPERATURE", "the wet bulb"));
    }

    @Override
    public Answer answer(Given given) {
        var dry = AirInput.temperature(given, "dry");
        var wet = AirInput.temperature(given, "wet");
        var air = MoistAir.ofWetBulb(dry, wet, AirInput.barometer(given), AirInput.ventilation(given));
        var dewPoint = air.dewPoint();
        return Answer.of()
                .with("relative_humidity_pct", air.humidity().pct())
                .with("vapour_pressure_kpa", air.vapour().kilopascals())
                .with("dew_point_c", dewPoint.map(Temperature::celsius).orElse(Double.NaN))
                .with("absolute_humidity_g_per_m3", air.absoluteHumidityGramsPerCubicMetre())
                .with("pressure_kpa", air.barometer().kilopascals())
                .with("dew_point_f", dewPoint.map(Temperature::fahrenheit).orElse(Double.NaN));
    }
}
