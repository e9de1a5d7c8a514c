package eggwright.desk.machine;

import eggwright.climate.rollup.Gap;
import eggwright.climate.sensor.Doubt;
import eggwright.climate.sensor.Held;
import eggwright.desk.machine.OneMachinePage.Table;
import eggwright.desk.part.TableShown;
import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Words what is in doubt: readings held back and why, silences, and the sensors themselves. */
final class CareWords {
    private static final int MOST_ROWS = 20;

    private final ZoneId zone;
    private final Words words;
    private final Days days;

    CareWords(ZoneId zone, Words words) {
        this.zone = zone;
        this.words = words;
        this.days = Days.in(words.language());
    }

    List<Table> of(List<Told> told) {
        return told.isEmpty() ? List.of() : List.of(held(told), silences(told), sensors(told));
    }

    /** How much of each there is. */
    String brief(List<Told> told) {
        return words.say(
                "care",
                told.stream().mapToInt(t -> doubted(t).size()).sum(),
                told.stream().mapToInt(t -> t.silences().size()).sum(),
                told.size());
    }

    /** Without what a person set aside: that is no doubt. */
    private static List<Held> doubted(Told told) {
        return told.held().stream().filter(h -> h.why() != Doubt.SET_ASIDE).toList();
    }

    private String aside(List<Told> told) {
        var aside = told.stream()
                .filter(t -> doubted(t).size() < t.held().size())
                .map(t -> t.channel().sensor().text() + " (" + quantity(t) + ")")
                .toList();
        return aside.isEmpty() ? "" : words.say("sensors.aside", String.join(", ", aside));
    }

    private record HeldBy(Told by, Held held) {}

    private Table held(List<Told> told) {
        var all = told.stream()
                .flatMap(t -> doubted(t).stream().map(h -> new HeldBy(t, h)))
                .sorted(Comparator.<HeldBy, java.time.Instant>comparing(
                                h -> h.held().at())
                        .reversed())
                .toList();
        var rows = all.stream()
                .limit(MOST_ROWS)
                .map(h -> List.of(
                        Cell.of(days.stamp(h.held().at().atZone(zone))),
                        Cell.of(h.by().channel().sensor().text()),
                        Cell.of(number(h.held().value()) + "\u00a0"
                                + h.by().channel().unit().sign()),
                        Cell.of(words.say("doubt." + h.held().why().name().toLowerCase(Locale.ROOT)))))
                .toList();
        return new Table(
                words.say("held.title"),
                words.say("held.text", all.size()) + more(all.size()),
                new TableShown(
                        List.of(
                                words.say("head.at"),
                                words.say("head.sensor"),
                                words.say("head.said"),
                                words.say("head.why")),
                        rows));
    }

    private record SilenceOf(Told by, Gap gap) {}

    private Table silences(List<Told> told) {
        var all = told.stream()
                .flatMap(t -> t.silences().stream().map(g -> new SilenceOf(t, g)))
                .sorted(Comparator.<SilenceOf, java.time.Instant>comparing(
                                g -> g.gap().from())
                        .reversed())
                .toList();
        var rows = all.stream()
                .limit(MOST_ROWS)
                .map(s -> List.of(
                        Cell.of(days.stamp(s.gap().from().atZone(zone))),
                        Cell.of(days.stamp(s.gap().to().atZone(zone))),
                        Cell.of(Lengths.say(
                                Duration.between(s.gap().from(), s.gap().to()), words)),
                        Cell.of(s.by().channel().sensor().text()),
                        Cell.of(quantity(s.by()))))
                .toList();
        return new Table(
                words.say("silences.title"),
                words.say("silences.text", all.size()) + more(all.size()),
                new TableShown(
                        List.of(
                                words.say("head.from"),
                                words.say("head.to"),
                                words.say("head.length"),
                                words.say("head.sensor"),
                                words.say("head.quantity")),
                        rows));
    }

    private Table sensors(List<Told> told) {
        return new Table(
                words.say("sensors.title"),
                aside(told),
                new TableShown(
                        List.of(
                                words.say("head.sensor"),
                                words.say("head.quantity"),
                                words.say("head.unit"),
                                words.say("head.sensorSince"),
                                words.say("head.last")),
                        told.stream()
                                .map(t -> List.of(
                                        Cell.of(t.channel().sensor().text()),
                                        Cell.of(quantity(t)),
                                        Cell.of(t.channel().unit().sign()),
                                        Cell.of(days.day(t.extent().first().atZone(zone))),
                                        Cell.of(days.stamp(t.extent().last().atZone(zone)))))
                                .toList()));
    }

    private String quantity(Told told) {
        return words.say("quantity." + told.channel().quantity().word());
    }

    private String more(int all) {
        return all > MOST_ROWS ? " " + words.say("mostRows", MOST_ROWS) : "";
    }

    private String number(double value) {
        return String.format(words.language(), "%.1f", value);
    }
}
