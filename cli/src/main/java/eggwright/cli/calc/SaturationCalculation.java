package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.egg.air.Saturation;
import java.util.List;

/** How much vapour air can hold. */
final class SaturationCalculation implements Calculation {
    @Override
    public String name() {
        return "saturation";
    }

    @Override
    public String about() {
        return "The most vapour that air of a temperature can hold, over water: also the vapour pressure inside an egg.";
    }

    @Override
    public String example() {
        return "eggwright calc saturation --temperature 37.5C";
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.needed("temperature", "TEMPERATURE", "as 99.5F, 37.5C or 310.65K; 0C to 60C"));
    }

    @Override
    public Answer answer(Given given) {
        var water = AirInput.temperature(given, "temperature");
        return Answer.of()
                .with("saturation_vapour_pressure_kpa", Saturation.over(water).kilopascals());
    }
}
