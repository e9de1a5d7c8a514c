package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.egg.air.MoistAir;
import eggwright.egg.air.Sweating;
import eggwright.units.Pressure;
import java.util.List;

/** Whether an egg from the egg room sweats where it is carried to. */
final class SweatingCalculation implements Calculation {
    private static final String EGG = "egg-temperature";
    private static final String AIR = "air";

    @Override
    public String name() {
        return "sweating";
    }

    @Override
    public String about() {
        return "Whether dew falls on a cold egg in other air, as when it leaves the egg room. Never set or stack eggs that"
                + " sweat.";
    }

    @Override
    public String example() {
        return "eggwright calc sweating --egg-temperature 55F --air 75F --humidity 60";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed(EGG, "TEMPERATURE", "of the eggs, as they lay in the egg room"),
                Input.needed(AIR, "TEMPERATURE", "of the room that they are carried to"),
                Input.needed(AirInput.HUMIDITY, "PCT", "relative humidity there, 0 to 100"));
    }

    @Override
    public Answer answer(Given given) {
        // Dew does not ask for the pressure of the air.
        var air = MoistAir.of(AirInput.temperature(given, AIR), AirInput.humidity(given), Pressure.SEA_LEVEL);
        var sweating = Sweating.of(AirInput.temperature(given, EGG), air);
        boolean sweats = sweating instanceof Sweating.Sweats;
        return Answer.of()
                .with("sweats", new Value.Truth(sweats))
                .with("safe_egg_temperature_c", sweating.safeEgg().celsius())
                .with("safe_egg_temperature_f", sweating.safeEgg().fahrenheit())
                .with("safe_humidity_pct", sweating.safeHumidity().pct())
                .with(
                        "advice",
                        sweats
                                ? "let the eggs warm in dry, moving air until they are above the safe temperature; do not wipe,"
                                        + " stack or set them wet"
                                : "the eggs stay dry");
    }
}
