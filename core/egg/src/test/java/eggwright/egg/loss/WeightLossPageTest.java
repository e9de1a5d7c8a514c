package eggwright.egg.loss;

import static eggwright.egg.KeptTable.shown;
import static eggwright.egg.KeptTable.signed;

import eggwright.egg.KeptTable;
import eggwright.egg.Published;
import eggwright.egg.air.MoistAir;
import eggwright.egg.air.Saturation;
import eggwright.egg.air.Ventilation;
import eggwright.egg.shell.ConductanceGuess;
import eggwright.egg.shell.Diffusion;
import eggwright.egg.shell.Diffusion.Conditions;
import eggwright.egg.shell.PublishedShell;
import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The tables of docs/models/weight-loss.md. */
class WeightLossPageTest {
    private static final String PAGE = "weight-loss.md";

    @Test
    void page_showsGuessesBesideTheLines() {
        var table = new KeptTable("egg", "g", "0.432 W^0.780 printed", "ours, mg/(day torr)", "days printed", "ours");
        Published.rows("egg_conductance", "allometric_prediction").forEach(row -> {
            var fresh = Mass.ofGrams(row.number("egg_mass_g"));
            table.add(
                    row.text("species"),
                    row.text("egg_mass_g"),
                    row.text("conductance_mg_per_day_per_mmHg"),
                    shown(4, ConductanceGuess.ofAr1974(fresh).milligramsPerDayTorr()),
                    row.text("incubation_period_days"),
                    shown(3, eggwright.egg.body.Allometry.incubationDays(fresh)));
        });
        table.isOn(PAGE, "guess");
    }

    @Test
    void page_showsConductanceByPressureAndTemperature() {
        var table = new KeptTable("at", "printed factor", "ours", "off, %");
        Published.rows("egg_conductance", "altitude_scaling").forEach(row -> {
            var there =
                    new Conditions(Pressure.ofKilopascals(row.number("pressure_hPa") / 10), Conditions.REFERENCE.egg());
            add(table, row.text("pressure_hPa") + " hPa", row, there);
        });
        Published.rows("egg_conductance", "temperature_scaling").forEach(row -> {
            var there = new Conditions(Pressure.SEA_LEVEL, Temperature.ofCelsius(row.number("egg_temperature_C")));
            add(table, row.text("egg_temperature_C") + " °C, n = 0.80", row, there);
        });
        table.isOn(PAGE, "scaling");
    }

    private static void add(KeptTable table, String words, Published row, Conditions there) {
        double printed = row.number("ratio_dimensionless");
        double ours = Diffusion.OF_VAPOUR.factor(there);
        table.add(words, row.text("ratio_dimensionless"), shown(5, ours), signed(3, 100 * (ours / printed - 1)));
    }

    @Test
    void page_showsTheTurkeyTrial() {
        var table = new KeptTable("machine, torr", "egg, °C", "loss in 28 days printed, %", "ours, %");
        Published.rows("egg_conductance", "consistency_check").forEach(row -> {
            double difference = Saturation.over(Temperature.ofCelsius(row.number("egg_temperature_C")))
                            .torr()
                    - row.number("ambient_vapour_pressure_mmHg");
            double ours = PublishedShell.TURKEY.of(Mass.ofGrams(100)).milligramsPerDayTorr() * difference * 28 / 1000;
            table.add(
                    row.text("ambient_vapour_pressure_mmHg"),
                    row.text("egg_temperature_C"),
                    row.text("mass_loss_percent"),
                    shown(3, ours));
        });
        table.isOn(PAGE, "turkey");
    }

    @Test
    void page_showsSetPointsBesideTheWorkedOnes() {
        var table = new KeptTable("example", "printed, %", "ours, %", "wet bulb printed, °C", "ours, °C");
        plain(
                table,
                "A: pheasant, 32.00 to 30.80 g in 7 days at 45 %, 13 % by day 21",
                "32.167",
                32.00,
                30.80,
                7,
                45,
                14,
                13,
                0,
                37.5);
        plain(
                table,
                "pheasant, 31.20 to 29.95 g in 8 days at 50 %, 13 % by day 21",
                "30.929",
                31.20,
                29.95,
                8,
                50,
                13,
                13,
                0,
                37.5);
        plain(
                table,
                "bobwhite, 9.10 to 8.62 g in 8 days at 55 %, 12 % by day 20",
                "61.75",
                9.10,
                8.62,
                8,
                55,
                12,
                12,
                0,
                37.5);
        plain(
                table,
                "hen, 60.00 to 57.30 g in 8 days at 55 %, 12 % by day 18, then 37.7 °C and egg 37.9 °C",
                "41.737",
                60.00,
                57.30,
                8,
                55,
                10,
                12,
                0.2,
                37.7);
        var b = Pressure.ofKilopascals(84.556);
        mixed(
                table,
                "B: pheasant at 1,500 m, store, machine and a fault, 14 % of the laid mass",
                "53.857",
                "28.888",
                List.of(
                        Spell.of(5, air(15, 75, b)),
                        new Spell(6, wetBulb(37.8, 29.0, b), Temperature.ofCelsius(37.6)),
                        Spell.of(1, air(36.9, 60, b))),
                new WaterLost(Mass.ofGrams(32.60), Mass.ofGrams(31.05)),
                Ahead.of(14, Temperature.ofCelsius(37.6), Temperature.ofCelsius(37.9), b),
                14);
        var c = Pressure.ofKilopascals(95.461);
        mixed(
                table,
                "bobwhite at 500 m, store and machine, 13 % of the laid mass",
                "60.455",
                "30.419",
                List.of(Spell.of(4, air(13, 80, c)), new Spell(8, wetBulb(37.7, 28.5, c), Temperature.ofCelsius(37.6))),
                new WaterLost(Mass.ofGrams(9.25), Mass.ofGrams(8.70)),
                Ahead.of(12, Temperature.ofCelsius(37.5), Temperature.ofCelsius(37.7), c),
                13);
        table.isOn(PAGE, "set-point");
    }

    private static void plain(
            KeptTable table,
            String words,
            String printed,
            double set,
            double now,
            double days,
            double pct,
            double left,
            double target,
            double offset,
            double nextAir) {
        var past = List.of(Spell.of(days, air(37.5, pct, Pressure.SEA_LEVEL)));
        var lost = new WaterLost(Mass.ofGrams(set), Mass.ofGrams(now));
        var ahead = Ahead.of(
                left, Temperature.ofCelsius(nextAir), Temperature.ofCelsius(nextAir + offset), Pressure.SEA_LEVEL);
        table.add(words, printed, shown(3, needed(past, lost, ahead, target)), "", "");
    }

    private static void mixed(
            KeptTable table,
            String words,
            String printed,
            String wetPrinted,
            List<Spell> past,
            WaterLost lost,
            Ahead ahead,
            double target) {
        double needed = needed(past, lost, ahead, target);
        table.add(
                words,
                printed,
                shown(3, needed),
                wetPrinted,
                shown(
                        3,
                        ahead.at(new Humidity(needed))
                                .wetBulb(Ventilation.ASPIRATED)
                                .celsius()));
    }

    private static double needed(List<Spell> past, WaterLost lost, Ahead ahead, double target) {
        var diffusion = Diffusion.OF_VAPOUR;
        // The plain examples hold the conductance constant between the stages.
        var held = past.size() == 1 ? Diffusion.WITHOUT_TEMPERATURE : diffusion;
        return HumidityLine.of(lost.before(), lost.after(), lost.through(past, held), ahead, held)
                .humidityPct(target);
    }

    private static MoistAir air(double celsius, double pct, Pressure barometer) {
        return MoistAir.of(Temperature.ofCelsius(celsius), new Humidity(pct), barometer);
    }

    private static MoistAir wetBulb(double dry, double wet, Pressure barometer) {
        return MoistAir.ofWetBulb(
                Temperature.ofCelsius(dry), Temperature.ofCelsius(wet), barometer, Ventilation.ASPIRATED);
    }
}
