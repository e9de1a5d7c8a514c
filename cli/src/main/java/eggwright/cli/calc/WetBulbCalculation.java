package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.egg.air.MoistAir;
import java.util.List;

/** To which wet bulb to turn the dial for a humidity. */
final class WetBulbCalculation implements Calculation {
    @Override
    public String name() {
        return "wet-bulb";
    }

    @Override
    public String about() {
        return "What a wet bulb shows in air of this humidity: the number to turn the dial to.";
    }

    @Override
    public String example() {
        return "eggwright calc wet-bulb --dry 37.5C --humidity 55 --altitude 1500m";
    }

    @Override
    public List<Input> inputs() {
        return AirInput.withPlaceAndFan(
                Input.needed("dry", "TEMPERATURE", "the dry bulb, as 99.5F, 37.5C or 310.65K"),
                Input.needed(AirInput.HUMIDITY, "PCT", "relative humidity, 0 to 100"));
    }

    @Override
    public Answer answer(Given given) {
        var dry = AirInput.temperature(given, "dry");
        var air = MoistAir.of(dry, AirInput.humidity(given), AirInput.barometer(given));
        var wet = air.wetBulb(AirInput.ventilation(given));
        return Answer.of().with("wet_bulb_c", wet.celsius()).with("wet_bulb_f", wet.fahrenheit());
    }
}
