package eggwright.cli.calc;

import eggwright.egg.air.MoistAir;
import eggwright.egg.loss.Spell;
import eggwright.egg.loss.WaterLost;
import eggwright.units.Mass;

/** Reads two weighings and the air between them, as the calculations of water loss take them. */
final class WeighedInput {
    static final String SET_MASS = "set-mass";
    static final String NOW_MASS = "now-mass";
    static final String AIR = "air";
    static final String EGG = "egg-temperature";

    static final Input SET_MASS_INPUT =
            Input.needed(SET_MASS, "MASS", "what the eggs weighed at set, tray taken off, as 31.2g, 1.1oz or 2.4kg");
    static final Input NOW_MASS_INPUT = Input.needed(NOW_MASS, "MASS", "what the same eggs weigh now");
    static final Input AIR_INPUT = Input.needed(AIR, "TEMPERATURE", "the machine's air since, as 99.5F or 37.5C");
    static final Input HUMIDITY_INPUT = Input.needed(AirInput.HUMIDITY, "PCT", "its relative humidity since, 0 to 100");
    static final Input EGG_INPUT = Input.optional(
            EGG, "TEMPERATURE", "of the eggs since, where somebody measured it; that of the air where not said");

    private static final double MOST_LOST_PCT = 50;

    private WeighedInput() {}

    static WaterLost lost(Given given) {
        var lost =
                new WaterLost(given.neededQuantity(SET_MASS, Mass::parse), given.neededQuantity(NOW_MASS, Mass::parse));
        if (lost.pct() > MOST_LOST_PCT) {
            throw given.wrong(
                    NOW_MASS,
                    lost.after() + " is less than half of " + lost.before()
                            + ". No egg loses that much and lives. Look at both masses, and whether the same eggs were"
                            + " weighed.");
        }
        return lost;
    }

    /** The air and the eggs between the two weighings. */
    static Spell spell(Given given, double days) {
        var temperature = AirInput.temperature(given, AIR);
        var air = MoistAir.of(temperature, AirInput.humidity(given), AirInput.barometer(given));
        return new Spell(days, air, AirInput.optionalTemperature(given, EGG).orElse(temperature));
    }

    /** A number of days above 0. */
    static double days(Given given, String input) {
        double days = given.neededNumber(input);
        if (!(days > 0 && days <= 100)) {
            throw given.wrong(input, days + " is outside 0 to 100 days; nothing is lost on day 0.");
        }
        return days;
    }
}
