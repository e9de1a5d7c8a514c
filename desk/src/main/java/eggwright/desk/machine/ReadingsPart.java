package eggwright.desk.machine;

import eggwright.book.picture.MachinePicture;
import eggwright.climate.air.SensorCare;
import eggwright.climate.air.Surroundings;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore.Extent;
import eggwright.climate.rollup.Band;
import eggwright.desk.machine.OneMachinePage.Choice;
import eggwright.desk.machine.OneMachinePage.Link;
import eggwright.desk.machine.OneMachinePage.Standing;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What was read in a place, over a window of time: charts, and what of it is in doubt. */
final class ReadingsPart {
    private static final String CHARTS = "#readings";

    private final Rooms rooms;
    private final SensorCare care;
    private final ZoneId zone;
    private final Degrees degrees;
    private final Words words;

    ReadingsPart(Rooms rooms, SensorCare care, ZoneId zone, Degrees degrees, Words words) {
        this.rooms = rooms;
        this.care = care;
        this.zone = zone;
        this.degrees = degrees;
        this.words = words;
    }

    private record Sensor(Channel channel, Extent extent) {}

    /**
     * @param machine what was read by hand; empty where nobody reads
     * @param band in which it works; empty where none is known
     */
    ReadingsShown of(
            ReadingPlace place,
            Optional<MachinePicture> machine,
            Surroundings surroundings,
            Charts.Aims aims,
            Optional<Band> band,
            Window asked) {
        var sensors = rooms.channels(place).stream()
                .flatMap(c -> rooms.readings().extent(c).map(e -> new Sensor(c, e)).stream())
                .toList();
        var first = first(sensors, machine);
        var window = asked.since(first);
        var told = sensors.stream()
                .map(s -> Told.of(rooms.readings(), care, s.channel(), s.extent(), window, zone, band))
                .toList();
        var charts = new Charts(window, zone, degrees, words).of(told, machine, surroundings, aims);
        var careWords = new CareWords(zone, words);
        var path = MachinePaths.of(place);
        var days = Days.in(words.language());
        return new ReadingsShown(
                spans(path, window),
                turns(path, window, first),
                words.say(
                        "window",
                        days.stamp(window.from().atZone(zone)),
                        days.stamp(window.to().atZone(zone))),
                new ReadingsShown.At(
                        window.span().word(), window.from(), window.to(), window.now(), first.orElse(window.from())),
                charts.isEmpty() ? words.say(first.isPresent() ? "readings.none" : never(place)) : "",
                charts,
                told.isEmpty() ? "" : careWords.brief(told),
                careWords.of(told));
    }

    private static String never(ReadingPlace place) {
        return place instanceof ReadingPlace.InMachine ? "readings.never" : "readings.neverInRoom";
    }

    /** When anything was first read, by a sensor or by hand. */
    private static Optional<Instant> first(List<Sensor> sensors, Optional<MachinePicture> machine) {
        var instants = new ArrayList<Instant>();
        sensors.forEach(s -> instants.add(s.extent().first()));
        machine.ifPresent(
                m -> m.climate().forEach(read -> instants.add(read.at().toInstant())));
        return instants.stream().min(Comparator.naturalOrder());
    }

    private List<Choice> spans(String path, Window window) {
        return Arrays.stream(Span.values())
                .map(span -> new Choice(
                        path + window.as(span) + CHARTS,
                        words.say("span." + span.word()),
                        span == window.span() ? Standing.SHOWN : Standing.OTHER))
                .toList();
    }

    private List<Link> turns(String path, Window window, Optional<Instant> first) {
        var turns = new ArrayList<Link>();
        if (first.filter(f -> f.isBefore(window.from())).isPresent()) {
            turns.add(new Link(path + window.earlier() + CHARTS, words.say("earlier")));
        }
        if (window.to().isBefore(window.now())) {
            turns.add(new Link(path + window.later() + CHARTS, words.say("later")));
        }
        return turns;
    }
}
