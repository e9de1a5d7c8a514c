package eggwright.desk.machine;

import eggwright.book.picture.MachinePicture;
import eggwright.book.picture.Picture;
import eggwright.climate.air.AirHistory;
import eggwright.climate.air.KnownBy;
import eggwright.climate.air.Surroundings;
import eggwright.climate.machine.MachineNow;
import eggwright.desk.Visit;
import eggwright.desk.machine.OneMachinePage.Figure;
import eggwright.desk.machine.OneMachinePage.Link;
import eggwright.desk.machine.OneMachinePage.Now;
import eggwright.desk.who.May;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.units.OutOfRange;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** Words the air of a machine, each figure with how it is known. */
final class NowWords {
    private final Instant at;
    private final ZoneId zone;
    private final Degrees degrees;
    private final Words words;

    NowWords(Instant at, ZoneId zone, Degrees degrees, Words words) {
        this.at = at;
        this.zone = zone;
        this.degrees = degrees;
        this.words = words;
    }

    Now of(MachineNow now, Surroundings surroundings, Picture picture, Visit visit) {
        var air = now.air().air();
        var machine = picture.machine(now.machine());
        var figures = new ArrayList<Figure>();
        figures.add(new Figure(
                words.say("now.dry"),
                degrees.say(air.temperature()),
                known(now.air().warmth(), machine, read -> read.what().dry() != null)));
        figures.add(new Figure(
                words.say("now.humidity"),
                Math.round(air.humidity().pct()) + "\u00a0%",
                known(
                        now.air().wetness(),
                        machine,
                        read -> read.what().humidity() != null || read.what().wet() != null)));
        try {
            figures.add(new Figure(
                    words.say("now.wet"), degrees.say(air.wetBulb(surroundings.ventilation())), wetBulb(picture)));
        } catch (OutOfRange frozen) {
            // Air so cold and dry is in no machine that runs.
        }
        figures.add(Figure.of(
                words.say("now.dewPoint"), air.dewPoint().map(degrees::say).orElseGet(() -> words.say("now.noDew"))));
        figures.add(Figure.of(words.say("now.absolute"), Calculator.absolute(air, degrees)));
        var altitude = picture.farm().habits().altitude();
        var pressure = Math.round(surroundings.barometer().hectopascals());
        return new Now(
                figures,
                altitude == null
                        ? words.say("now.seaLevel", Long.toString(pressure))
                        : words.say("now.altitude", Heights.say(altitude), Long.toString(pressure)),
                altitude == null && May.RUN.lets(visit.visitor())
                        ? Optional.of(new Link("/notes/farm-habits", words.say("now.setAltitude")))
                        : Optional.empty());
    }

    private String wetBulb(Picture picture) {
        return words.say(
                "now.reckoned." + picture.farm().habits().wetBulbAir().name().toLowerCase(Locale.ROOT));
    }

    private String known(KnownBy by, Optional<MachinePicture> machine, Predicate<MachinePicture.Read> has) {
        return switch (by) {
            case READINGS -> words.say("known.readings");
            case SET_POINT -> words.say("known.setPoint");
            case HAND ->
                machine.stream()
                        .flatMap(m -> m.climate().stream())
                        .filter(has)
                        .min(Comparator.comparing(read ->
                                Duration.between(read.at().toInstant(), at).abs()))
                        .filter(read -> Duration.between(read.at().toInstant(), at)
                                        .abs()
                                        .toHours()
                                <= AirHistory.HAND_HOURS)
                        .map(read -> words.say(
                                "known.handAt",
                                Days.in(words.language()).stamp(read.at().atZoneSameInstant(zone))))
                        .orElseGet(() -> words.say("known.hand"));
        };
    }
}
