package eggwright.egg.air;

import static eggwright.egg.KeptTable.shown;
import static eggwright.egg.KeptTable.signed;

import eggwright.egg.KeptTable;
import eggwright.egg.Published;
import eggwright.units.Altitude;
import eggwright.units.Humidity;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The tables of docs/models/moist-air.md. */
class MoistAirPageTest {
    private static final String PAGE = "moist-air.md";

    @Test
    void page_showsSaturationBesideIapws() {
        var shownIn = Set.of("0", "5", "10", "20", "25", "30", "35", "37.5", "37.8", "40", "45", "50");
        var seen = new java.util.TreeMap<Double, Published>();
        Published.rows("saturation_vapour_pressure")
                .filter(row -> shownIn.contains(row.text("temperature_C")))
                .filter(row -> row.text("formulation").startsWith("IAPWS-95"))
                // A full equation of state before a printed table, where there are both.
                .sorted(java.util.Comparator.comparing((Published row) -> row.text("row_kind"))
                        .reversed())
                .forEach(row -> seen.put(row.number("temperature_C"), row));
        var table = new KeptTable("°C", "published, kPa", "from", "ours, kPa", "off, %");
        seen.forEach((celsius, row) -> {
            double published = row.number("saturation_vapour_pressure_Pa") / 1000;
            double ours = Saturation.kilopascals(celsius);
            table.add(
                    row.text("temperature_C"),
                    shown(5, published),
                    row.text("row_kind").equals("published") ? "steam table" : "python3-iapws",
                    shown(5, ours),
                    signed(3, 100 * (ours / published - 1)));
        });
        table.isOn(PAGE, "saturation");
    }

    @Test
    void page_showsHowFarThePsychrometerIsOff() {
        var table = new KeptTable("rows", "number", "mean off, points", "largest off, points");
        add(table, "US Weather Bureau 1897, printed to 1 %", "published_table");
        add(table, "printed examples", "published_example");
        add(table, "thermodynamic wet bulb, PsychroLib 2.5.0", "computed_thermodynamic");
        add(table, "psychrometer equation, two coefficients, IAPWS saturation", "computed_psychrometer_equation");
        table.isOn(PAGE, "psychrometer");
    }

    private static void add(KeptTable table, String words, String kind) {
        var off = Published.rows("psychrometer", kind, "relative_humidity_percent")
                .map(MoistAirPageTest::off)
                .toList();
        table.add(
                words,
                Integer.toString(off.size()),
                signed(2, off.stream().mapToDouble(d -> d).average().orElseThrow()),
                shown(2, off.stream().mapToDouble(Math::abs).max().orElseThrow()));
    }

    private static double off(Published row) {
        var pressure = row.text("pressure_hPa").isEmpty()
                ? Pressure.SEA_LEVEL
                : Pressure.ofKilopascals(row.number("pressure_hPa") / 10);
        return MoistAir.ofWetBulb(
                                Temperature.ofCelsius(row.number("dry_bulb_C")),
                                Temperature.ofCelsius(row.number("wet_bulb_C")),
                                pressure,
                                Ventilation.ASPIRATED)
                        .humidity()
                        .pct()
                - row.number("relative_humidity_percent");
    }

    @Test
    void page_showsTheAtmosphereBesideIso2533() {
        var table = new KeptTable("height, m", "kind", "ISO 2533, kPa", "ours, kPa", "off, %", "ISO, °C", "ours, °C");
        Published.rows("standard_atmosphere", "published")
                .filter(row -> row.text("source").startsWith("ISO"))
                .filter(row -> Set.of("-500", "0", "500", "750", "1000", "1400", "2000", "2200", "3000")
                        .contains(row.text("altitude_m")))
                .forEach(row -> {
                    double metres = row.number("altitude_m");
                    var ours = row.text("altitude_type").equals("geometric")
                            ? StandardAtmosphere.at(Altitude.ofMetres(metres))
                            : StandardAtmosphere.atGeopotentialMetres(metres);
                    double published = row.number("pressure_hPa") / 10;
                    table.add(
                            row.text("altitude_m"),
                            row.text("altitude_type").equals("geometric") ? "as a map gives it" : "geopotential",
                            shown(4, published),
                            shown(4, ours.pressure().kilopascals()),
                            signed(4, 100 * (ours.pressure().kilopascals() / published - 1)),
                            row.text("temperature_C"),
                            shown(3, ours.temperature().celsius()));
                });
        table.isOn(PAGE, "atmosphere");
    }

    /** What a keeper reads off: the wet bulb in °F at 99.5 °F, by humidity and height. */
    @Test
    void page_showsWetBulbsByHeight() {
        var table = new KeptTable("humidity, %", "sea level", "500 m", "1500 m", "2500 m", "sea level, no fan");
        for (int pct : List.of(40, 45, 50, 55, 60, 65, 70)) {
            table.add(
                    Integer.toString(pct),
                    wet(pct, 0, Ventilation.ASPIRATED),
                    wet(pct, 500, Ventilation.ASPIRATED),
                    wet(pct, 1500, Ventilation.ASPIRATED),
                    wet(pct, 2500, Ventilation.ASPIRATED),
                    wet(pct, 0, Ventilation.STILL));
        }
        table.isOn(PAGE, "wet bulb");
    }

    private static String wet(int pct, double metres, Ventilation ventilation) {
        var air = MoistAir.of(
                Temperature.ofFahrenheit(99.5),
                new Humidity(pct),
                StandardAtmosphere.at(Altitude.ofMetres(metres)).pressure());
        return shown(1, air.wetBulb(ventilation).fahrenheit());
    }

    @Test
    void page_showsWhenAColdEggSweats() {
        var table = new KeptTable("egg", "room 65 °F", "70 °F", "75 °F", "80 °F", "85 °F");
        for (int egg : List.of(55, 60, 65)) {
            table.add(
                    egg + " °F",
                    wettest(egg, 65),
                    wettest(egg, 70),
                    wettest(egg, 75),
                    wettest(egg, 80),
                    wettest(egg, 85));
        }
        table.isOn(PAGE, "sweating");
    }

    private static String wettest(double egg, double room) {
        var dry = MoistAir.of(Temperature.ofFahrenheit(room), new Humidity(0), Pressure.SEA_LEVEL);
        return shown(
                        0,
                        Sweating.of(Temperature.ofFahrenheit(egg), dry)
                                .safeHumidity()
                                .pct())
                + " %";
    }
}
