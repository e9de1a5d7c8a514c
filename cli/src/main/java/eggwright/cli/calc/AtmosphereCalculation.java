package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.egg.air.StandardAtmosphere;
import eggwright.units.Altitude;
import java.util.List;

/** The pressure of the air at a height. */
final class AtmosphereCalculation implements Calculation {
    @Override
    public String name() {
        return "atmosphere";
    }

    @Override
    public String about() {
        return "Pressure and temperature of the standard atmosphere (ISO 2533) at a height. Weather moves the pressure by"
                + " up to 3 % either way.";
    }

    @Override
    public String example() {
        return "eggwright calc atmosphere --altitude 1500m";
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.needed(
                AirInput.ALTITUDE,
                "HEIGHT",
                "height above the sea as a map gives it, as 300m or 984ft; below it -28m"));
    }

    @Override
    public Answer answer(Given given) {
        var air = StandardAtmosphere.at(given.neededQuantity(AirInput.ALTITUDE, Altitude::parse));
        return Answer.of()
                .with("pressure_kpa", air.pressure().kilopascals())
                .with("temperature_c", air.temperature().celsius());
    }
}
