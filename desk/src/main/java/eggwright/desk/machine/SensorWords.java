package eggwright.desk.machine;

import eggwright.book.entry.SensorAt;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SensorPicture;
import eggwright.climate.air.NotedCare;
import eggwright.climate.care.ByHand;
import eggwright.climate.care.SensorNow;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.sensor.Accuracy;
import eggwright.desk.machine.OneMachinePage.Figure;
import eggwright.desk.machine.OneMachinePage.Link;
import eggwright.desk.machine.OneMachinePage.Table;
import eggwright.desk.machine.SensorsPage.Sensor;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words the sensors of one place: what each reads, what is added to it, and what can be noted of it. */
final class SensorWords {
    private final Picture picture;
    private final ReadingPlace place;
    private final ZoneId zone;
    private final Words words;
    private final Days days;
    private final Hand hand;
    private final SensorValues values;

    /** Whether whoever looks may note anything. */
    enum Hand {
        MAY_NOTE,
        LOOKS_ON
    }

    SensorWords(Picture picture, ReadingPlace place, ZoneId zone, Degrees degrees, Words words, Hand hand) {
        this.picture = picture;
        this.place = place;
        this.zone = zone;
        this.words = words;
        this.days = Days.in(words.language());
        this.hand = hand;
        this.values = new SensorValues(degrees);
    }

    /** How many want a look, and what is held back. */
    static String brief(List<SensorNow> sensors, Words words) {
        long looks = sensors.stream().filter(s -> !s.findings().isEmpty()).count();
        int held = sensors.stream()
                .filter(s -> s.aside().isEmpty())
                .mapToInt(SensorNow::heldCount)
                .sum();
        return words.say("sensors.looks", looks) + (held == 0 ? "" : " " + words.say("sensors.held", held));
    }

    String brief(List<SensorNow> sensors) {
        return brief(sensors, words);
    }

    /** Those that read, then those that were only spoken of. */
    List<Sensor> of(List<SensorNow> sensors) {
        var shown = new ArrayList<Sensor>();
        sensors.forEach(sensor -> shown.add(sensor(sensor)));
        for (var said : picture.sensors().values()) {
            boolean hasRead =
                    sensors.stream().anyMatch(s -> NotedCare.of(s.channel()).equals(said.sensor()));
            if (!hasRead && NotedCare.place(said.sensor()).equals(place)) {
                shown.add(new Sensor(
                        title(said.sensor().sensor(), NotedCare.quantity(said.sensor())),
                        List.of(new SensorsPage.Look(
                                words.say("sensor.neverRead"), words.say("sensor.neverRead.then"))),
                        List.of(),
                        List.of(),
                        List.of(new SaidWords(zone, values, words).of(said, NotedCare.quantity(said.sensor())))));
            }
        }
        return shown;
    }

    /** How it is found out. */
    List<String> rules() {
        return List.of(words.say("rule.held"), words.say("rule.stuck"), words.say("rule.twin"), words.say("rule.hand"));
    }

    private String title(String sensor, Quantity quantity) {
        return words.say("sensor.title", sensor, words.say("quantity." + quantity.word()));
    }

    private Sensor sensor(SensorNow sensor) {
        var channel = sensor.channel();
        var at = NotedCare.of(channel);
        var said = picture.sensor(at);
        var findings = new FindingWords(zone, values, words);
        var tables = new ArrayList<Table>();
        if (!sensor.held().isEmpty()) {
            tables.add(new HeldWords(zone, values, words).of(sensor, at, hand));
        }
        said.map(s -> new SaidWords(zone, values, words).of(s, channel.quantity()))
                .ifPresent(tables::add);
        return new Sensor(
                title(channel.sensor().text(), channel.quantity()),
                sensor.findings().stream()
                        .map(finding -> findings.of(finding, channel))
                        .toList(),
                figures(sensor, said),
                hand == Hand.MAY_NOTE ? actions(sensor, at) : List.of(),
                tables);
    }

    private List<Figure> figures(SensorNow sensor, Optional<SensorPicture> said) {
        var channel = sensor.channel();
        var figures = new ArrayList<Figure>();
        sensor.lastRead()
                .ifPresent(read -> figures.add(new Figure(
                        words.say("sensor.last"),
                        values.asRead(channel, read),
                        stamp(sensor.extent().last()))));
        sensor.correction()
                .ifPresent(correction -> figures.add(new Figure(
                        words.say("sensor.adds"),
                        values.difference(channel.quantity(), correction.offset()),
                        words.say(
                                "sensor.adds.since",
                                stamp(correction.from()),
                                said.flatMap(s -> by(s, correction.from())).orElse("")))));
        if (sensor.correction().isPresent() && sensor.lastCorrected().isPresent()) {
            figures.add(Figure.of(
                    words.say("sensor.counts"),
                    values.value(channel.quantity(), sensor.lastCorrected().getAsDouble())));
        }
        sensor.byHand()
                .ifPresent(pair -> figures.add(new Figure(
                        words.say("sensor.byHand"),
                        values.value(channel.quantity(), pair.hand()),
                        words.say(
                                "sensor.byHand.it",
                                values.value(channel.quantity(), pair.corrected()),
                                stamp(pair.at())))));
        sensor.aside()
                .ifPresent(aside -> figures.add(
                        Figure.of(words.say("sensor.aside"), words.say("sensor.aside.since", stamp(aside.from())))));
        return figures;
    }

    /** What the comparison that holds was made with. */
    private Optional<String> by(SensorPicture said, Instant from) {
        return said.compared().reversed().stream()
                .filter(c -> c.from().toInstant().equals(from))
                .map(c -> c.what().by())
                .filter(by -> !by.isEmpty())
                .map(by -> words.say("sensor.adds.by", by))
                .findFirst();
    }

    private String stamp(Instant at) {
        return days.stamp(at.atZone(zone));
    }

    private List<Link> actions(SensorNow sensor, SensorAt at) {
        var actions = new ArrayList<Link>();
        actions.add(new Link(SensorLinks.to("sensor-compared", at).path(), words.say("sensor.compare")));
        sensor.byHand()
                .filter(pair -> Math.abs(pair.hand() - pair.corrected())
                        >= Accuracy.of(sensor.channel().quantity()).sensor())
                .ifPresent(pair -> actions.add(takeHand(sensor.channel(), at, pair)));
        boolean isAside = sensor.aside().isPresent();
        actions.add(new Link(
                SensorLinks.to("sensor-trust-changed", at)
                        .with("trust", isAside ? "taken_back" : "set_aside")
                        .path(),
                words.say(isAside ? "sensor.takeBack" : "sensor.setAside")));
        return actions;
    }

    /** Offered where they differ by more than the sensor may err. */
    private Link takeHand(Channel channel, SensorAt at, ByHand pair) {
        return new Link(
                SensorLinks.to("sensor-compared", at)
                        .with("showed", values.typed(channel, pair.read()))
                        .with("reference", values.typedStandard(channel, pair.hand()))
                        .with("compared_by", words.say("sensor.hand"))
                        .with("counts_from", SensorLinks.moment(pair.at(), zone))
                        .path(),
                words.say(
                        "sensor.takeHand",
                        values.difference(
                                channel.quantity(), pair.hand() - channel.unit().standard(pair.read()))));
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
