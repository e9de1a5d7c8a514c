package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.egg.loss.Ahead;
import eggwright.egg.loss.HumidityAdvice;
import eggwright.egg.loss.HumidityLine;
import eggwright.egg.loss.SafeLimits;
import eggwright.egg.loss.Spell;
import eggwright.egg.shell.Diffusion;
import eggwright.units.Temperature;
import java.util.List;

/** The humidity that lands eggs at a wanted weight loss. */
final class LossCalculation implements Calculation {
    private static final String DAY = "day";
    private static final String TRANSFER_DAY = "transfer-day";
    private static final String TARGET = "target";
    private static final String NEXT_AIR = "next-air";
    private static final String NEXT_EGG = "next-egg-temperature";

    /**
     * Not drier than 30 % and not wetter than 70 %: outside, do not chase the number (common practice, from memory). Drier
     * air dries single thin-shelled eggs out; wetter air drowns thick-shelled ones, sweats, and feeds germs.
     */
    private static final SafeLimits SAFE = SafeLimits.of(30, 70);

    private static final double LEAST_TARGET_PCT = 1;
    private static final double MOST_TARGET_PCT = 50;
    private static final double COLDEST_MACHINE_FAHRENHEIT = 60;

    @Override
    public String name() {
        return "loss";
    }

    @Override
    public String about() {
        return "Weight lost so far and by transfer if the dial stays, and the humidity to run from now on to land at a"
                + " target, never outside 30 to 70 %.";
    }

    @Override
    public String example() {
        return "eggwright calc loss --set-mass 31.2g --now-mass 29.4g --day 10 --transfer-day 21 --target 12 --air 99.5F"
                + " --humidity 50";
    }

    @Override
    public List<Input> inputs() {
        return AirInput.withPlaceAndFan(
                WeighedInput.SET_MASS_INPUT,
                WeighedInput.NOW_MASS_INPUT,
                Input.needed(DAY, "N", "the day of this weighing, counted from set, which is day 0"),
                Input.needed(TRANSFER_DAY, "N", "the day by which the target should be reached"),
                Input.needed(TARGET, "PCT", "wanted loss by then, in percent of the set mass"),
                WeighedInput.AIR_INPUT,
                WeighedInput.HUMIDITY_INPUT,
                WeighedInput.EGG_INPUT,
                Input.optional(NEXT_AIR, "TEMPERATURE", "the machine's air from now on; as before where not said"),
                Input.optional(
                        NEXT_EGG,
                        "TEMPERATURE",
                        "the eggs from now on; as much above or below the air as before where not said"));
    }

    @Override
    public Answer answer(Given given) {
        var lost = WeighedInput.lost(given);
        double day = WeighedInput.days(given, DAY);
        double daysLeft = daysLeft(given, day);
        double target = target(given);
        checkMachine(given, WeighedInput.AIR);
        checkMachine(given, NEXT_AIR);
        var past = WeighedInput.spell(given, day);
        var ahead = ahead(given, past, daysLeft);

        var shell = lost.through(List.of(past), Diffusion.WITHOUT_TEMPERATURE);
        var line = HumidityLine.of(lost.before(), lost.after(), shell, ahead, Diffusion.WITHOUT_TEMPERATURE);
        var now = AirInput.humidity(given);
        double required = line.humidityPct(target);
        var advice = HumidityAdvice.of(line, lost.pct(), target, SAFE);
        var wetBulb = ahead.at(advice.humidity()).wetBulb(AirInput.ventilation(given));
        return Answer.of()
                .with("loss_pct", lost.pct())
                .with("projected_loss_pct", line.lossPct(now.pct()))
                .with("required_humidity_pct", required)
                .with("recommended_humidity_pct", advice.humidity().pct())
                .with("recommended_wet_bulb_c", wetBulb.celsius())
                .with("reachable", new Value.Truth(advice instanceof HumidityAdvice.Reachable))
                .with("recommended_wet_bulb_f", wetBulb.fahrenheit())
                .with("recommended_loss_pct", advice.lossPct())
                .with("safe_low_pct", SAFE.low().pct())
                .with("safe_high_pct", SAFE.high().pct())
                .with("half_way_humidity_pct", SAFE.halfWay(now, required).pct())
                .with("advice", words(advice));
    }

    private static Ahead ahead(Given given, Spell past, double days) {
        var before = past.air().temperature();
        var air = AirInput.optionalTemperature(given, NEXT_AIR).orElse(before);
        var egg = AirInput.optionalTemperature(given, NEXT_EGG)
                .orElseGet(() -> air.equals(before)
                        ? past.egg()
                        : Temperature.ofCelsius(air.celsius() + past.egg().celsius() - before.celsius()));
        return Ahead.of(days, air, egg, past.air().barometer());
    }

    private static double daysLeft(Given given, double day) {
        double transfer = WeighedInput.days(given, TRANSFER_DAY);
        if (!(transfer > day)) {
            throw given.wrong(
                    TRANSFER_DAY,
                    transfer + " is not after day " + day
                            + ", on which the eggs were weighed; no day is left in which a"
                            + " humidity could change anything.");
        }
        return transfer - day;
    }

    private static double target(Given given) {
        var typed = given.needed(TARGET);
        var bare = typed.endsWith("%") ? typed.substring(0, typed.length() - 1) : typed;
        double target;
        try {
            target = Double.parseDouble(bare.strip());
        } catch (NumberFormatException notNumber) {
            throw given.wrong(TARGET, typed, "a percentage", "12");
        }
        if (!(target >= LEAST_TARGET_PCT && target <= MOST_TARGET_PCT)) {
            throw given.wrong(
                    TARGET,
                    typed + " is outside " + LEAST_TARGET_PCT + " to " + MOST_TARGET_PCT
                            + " %. It is the loss of the set mass by transfer: write 12 for twelve percent.");
        }
        return target;
    }

    /** A machine at 37.5 °F would be a refrigerator. */
    private static void checkMachine(Given given, String input) {
        AirInput.optionalTemperature(given, input)
                .filter(air -> air.scale() == Temperature.Scale.FAHRENHEIT)
                .filter(air -> air.number() < COLDEST_MACHINE_FAHRENHEIT)
                .ifPresent(air -> {
                    throw given.wrong(
                            input,
                            air + " is too cold for a machine. Celsius? Then write "
                                    + Temperature.ofCelsius(air.number()) + ".");
                });
    }

    private static String words(HumidityAdvice advice) {
        return switch (advice) {
            case HumidityAdvice.Reachable reachable -> "within reach; weigh again in a few days";
            case HumidityAdvice.OutOfReach(HumidityAdvice.Why why, var humidity, double loss) ->
                switch (why) {
                    case LOST_ALREADY -> "as much is lost already; wetter air only slows what follows";
                    case TOO_WET ->
                        "it would take wetter air than is safe; move half way first, weigh again in three days";
                    case TOO_DRY ->
                        "it would take drier air than is safe; move half way first, weigh again in three days";
                    case ROOM_TOO_WET -> "the room's air is too wet for that; dry the room";
                };
        };
    }
}
