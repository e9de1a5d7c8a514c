package eggwright.desk.machine;

import eggwright.climate.air.Surroundings;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.machine.WetBulbTablePage.Row;
import eggwright.desk.machine.WetBulbTablePage.Table;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.egg.air.MoistAir;
import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The table for the wall, at this farm's altitude and in its degrees. */
final class WetBulbTables implements Pages {
    /** Where machines are run, and where eggs wait: common practice, no source. */
    private static final Range FAHRENHEIT = new Range(List.of(98.0, 98.5, 99.0, 99.5, 100.0, 100.5, 101.0), 74, 94, 1);

    private static final Range FAHRENHEIT_COOL =
            new Range(List.of(50.0, 53.0, 56.0, 59.0, 62.0, 65.0, 68.0), 44, 66, 1);
    private static final Range CELSIUS = new Range(List.of(36.5, 36.9, 37.2, 37.5, 37.8, 38.1, 38.4), 23, 34.5, 0.5);
    private static final Range CELSIUS_COOL = new Range(List.of(10.0, 12.0, 14.0, 15.0, 16.0, 18.0, 20.0), 7, 19, 1);

    /** Drier air is in no machine, and the table would fill a second sheet. */
    private static final double LEAST_PCT = 20;

    private final LiveBook book;
    private final Rooms rooms;

    WetBulbTables(LiveBook book, Rooms rooms) {
        this.book = book;
        this.rooms = rooms;
    }

    /** Dry bulbs across, wet bulbs down. */
    private record Range(List<Double> dry, double fromWet, double toWet, double step) {
        boolean isWhole() {
            return step == Math.rint(step);
        }
    }

    @Override
    public void addTo(Routes routes) {
        routes.read(MachinePaths.WET_BULB_TABLE, May.READ, this::table);
    }

    private Answer table(Visit visit) {
        var words = Words.beside(WetBulbTables.class, visit.language());
        var picture = book.picture();
        var degrees = Degrees.of(picture, Optional.empty(), rooms.readings().channels(), visit.language());
        var habits = picture.farm().habits();
        var surroundings = Rooms.surroundings(habits);
        var altitude = habits.altitude();
        var pressure = Long.toString(Math.round(surroundings.barometer().hectopascals()));
        return Answer.page(
                "machine/wet-bulb-table.jte",
                new WetBulbTablePage(
                        altitude == null
                                ? words.say("now.seaLevel", pressure)
                                : words.say("now.altitude", Heights.say(altitude), pressure),
                        MachinePaths.ALL,
                        List.of(
                                table(
                                        words.say("wall.machines", degrees.sign()),
                                        degrees.isFahrenheit() ? FAHRENHEIT : CELSIUS,
                                        degrees,
                                        surroundings),
                                table(
                                        words.say("wall.eggRoom", degrees.sign()),
                                        degrees.isFahrenheit() ? FAHRENHEIT_COOL : CELSIUS_COOL,
                                        degrees,
                                        surroundings)),
                        List.of(
                                words.say("wall.read"),
                                words.say("wall." + habits.wetBulbAir().name().toLowerCase(Locale.ROOT)),
                                words.say("wall.wick"))));
    }

    private static Table table(String title, Range range, Degrees degrees, Surroundings surroundings) {
        var rows = new ArrayList<Row>();
        for (int i = 0; range.fromWet() + i * range.step() <= range.toWet(); i++) {
            double wet = range.fromWet() + i * range.step();
            var humidities = range.dry().stream()
                    .map(dry -> humidity(dry, wet, degrees, surroundings))
                    .toList();
            if (humidities.stream().anyMatch(h -> !h.isEmpty())) {
                rows.add(new Row(number(wet, range.isWhole(), degrees), humidities));
            }
        }
        boolean isWhole = range.dry().stream().allMatch(dry -> dry == Math.rint(dry));
        return new Table(
                title,
                range.dry().stream().map(dry -> number(dry, isWhole, degrees)).toList(),
                rows);
    }

    private static String number(double value, boolean isWhole, Degrees degrees) {
        return isWhole ? Long.toString(Math.round(value)) : degrees.number(value);
    }

    private static String humidity(double dry, double wet, Degrees degrees, Surroundings surroundings) {
        if (wet > dry) {
            return "";
        }
        try {
            var air = MoistAir.ofWetBulb(
                    degrees.back(dry), degrees.back(wet), surroundings.barometer(), surroundings.ventilation());
            double pct = air.humidity().pct();
            return pct < LEAST_PCT ? "" : Long.toString(Math.round(pct));
        } catch (OutOfRange noSuchAir) {
            return "";
        }
    }
}
