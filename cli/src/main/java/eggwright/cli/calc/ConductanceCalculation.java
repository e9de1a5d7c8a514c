package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.egg.shell.Diffusion;
import eggwright.egg.shell.Diffusion.Conditions;
import java.util.List;

/** How much water vapour shells let out, from two weighings. */
final class ConductanceCalculation implements Calculation {
    private static final String DAYS = "days";

    @Override
    public String name() {
        return "conductance";
    }

    @Override
    public String about() {
        return "How much water vapour a shell lets out, from two weighings: at this air pressure, at sea level, and at sea"
                + " level with the egg at 37.5 °C. Of a tray, that of all its eggs together.";
    }

    @Override
    public String example() {
        return "eggwright calc conductance --set-mass 31.2g --now-mass 29.4g --days 10 --air 99.5F --humidity 50";
    }

    @Override
    public List<Input> inputs() {
        return AirInput.withPlace(
                WeighedInput.SET_MASS_INPUT,
                WeighedInput.NOW_MASS_INPUT,
                Input.needed(DAYS, "N", "days between the two weighings"),
                WeighedInput.AIR_INPUT,
                WeighedInput.HUMIDITY_INPUT,
                WeighedInput.EGG_INPUT);
    }

    @Override
    public Answer answer(Given given) {
        var lost = WeighedInput.lost(given);
        var spell = WeighedInput.spell(given, WeighedInput.days(given, DAYS));
        var seaLevel = lost.through(List.of(spell), Diffusion.WITHOUT_TEMPERATURE);
        var reference = lost.through(List.of(spell), Diffusion.OF_VAPOUR);
        var here = seaLevel.at(new Conditions(spell.air().barometer(), spell.egg()), Diffusion.WITHOUT_TEMPERATURE);
        return Answer.of()
                .with("conductance_mg_per_day_torr", here.milligramsPerDayTorr())
                .with("conductance_mg_per_day_kpa", here.milligramsPerDayKilopascal())
                .with("conductance_sea_level_mg_per_day_torr", seaLevel.milligramsPerDayTorr())
                .with("conductance_sea_level_mg_per_day_kpa", seaLevel.milligramsPerDayKilopascal())
                .with("conductance_sea_level_37_5_c_mg_per_day_torr", reference.milligramsPerDayTorr())
                .with("vapour_pressure_difference_kpa", spell.differenceKilopascals())
                .with("pressure_kpa", spell.air().barometer().kilopascals());
    }
}
