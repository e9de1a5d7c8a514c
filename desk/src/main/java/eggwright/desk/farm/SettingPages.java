package eggwright.desk.farm;

import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Place;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.farm.LedgerPage.Cell;
import eggwright.desk.farm.LedgerPage.Link;
import eggwright.desk.farm.LedgerPage.Sheet;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.trade.ProfileField;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.List;

/** Habits and own figures. */
final class SettingPages implements Pages {
    private final LiveBook book;

    SettingPages(LiveBook book) {
        this.book = book;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/settings", May.READ, this::settings);
    }

    private static String joined(List<?> parts, Words words) {
        return parts.isEmpty()
                ? words.say("habit.none")
                : String.join(", ", parts.stream().map(Object::toString).toList());
    }

    private Answer settings(Visit visit) {
        var words = Shown.words(visit);
        var habits = book.picture().farm().habits();
        var weekday = habits.setWeekday();
        var days = habits.candlingDays();
        var minutes = habits.minutesOut();
        var altitude = habits.altitude();
        var rows = List.of(
                List.of(Cell.of(words.say("habit.name")), Cell.of(habits.farmName())),
                List.of(Cell.of(words.say("habit.zone")), Cell.of(book.zone().getId())),
                List.of(
                        Cell.of(words.say("habit.set")),
                        Cell.of((weekday == null
                                        ? words.say("anyDay")
                                        : weekday.getDisplayName(java.time.format.TextStyle.FULL, visit.language()))
                                + " " + habits.setHour())),
                List.of(
                        Cell.of(words.say("habit.candle")),
                        Cell.of(days == null ? words.say("custom") : joined(days, words))),
                List.of(Cell.of(words.say("habit.rounds")), Cell.of(joined(habits.rounds(), words))),
                List.of(Cell.of(words.say("habit.tray")), Cell.of(joined(habits.trayRows(), words))),
                List.of(
                        Cell.of(words.say("habit.minutesOut")),
                        Cell.of(minutes == null ? words.say("custom") : words.say("minutes", minutes))),
                List.of(
                        Cell.of(words.say("habit.altitude")),
                        Cell.of(altitude == null ? words.say("seaLevel") : altitude.toString())),
                List.of(Cell.of(words.say("habit.wetBulb")), Cell.of(words.say("wetBulb." + habits.wetBulbAir()))));
        var own = new ArrayList<List<Cell>>();
        for (var species : Species.values()) {
            var fields = book.picture().farm().overrides().get(species);
            if (fields != null) {
                fields.forEach((field, value) -> own.add(List.of(
                        Cell.of(words.species(species)),
                        Cell.of(ProfileField.ofWord(field).map(words::field).orElse(field)),
                        Cell.of(value.value()),
                        Cell.of(value.since()))));
            }
        }
        return Shown.page(new LedgerPage(
                Place.SETTINGS,
                words.say("settings.title"),
                words.say("settings.lead"),
                May.RUN.lets(visit.visitor())
                        ? List.of(
                                new Link("/notes/farm-habits", words.say("settings.habits")),
                                new Link("/notes/species-override", words.say("settings.own")),
                                new Link("/settings/people", words.say("settings.people")),
                                new Link("/settings/devices", words.say("settings.devices")),
                                new Link("/settings/sensors", words.say("settings.sensors")))
                        : List.of(new Link("/settings/sensors", words.say("settings.sensors"))),
                List.of(),
                List.of(
                        new Sheet(
                                words.say("settings.habitsTitle"),
                                "",
                                List.of(words.say("head.habit"), words.say("head.value")),
                                rows),
                        new Sheet(
                                words.say("settings.ownTitle"),
                                own.isEmpty() ? words.say("settings.ownNone") : "",
                                List.of(
                                        words.say("head.species"),
                                        words.say("head.figure"),
                                        words.say("head.value"),
                                        words.say("head.since")),
                                own))));
    }
}
