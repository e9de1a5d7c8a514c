package eggwright.desk.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.Picture;
import eggwright.climate.air.NotedCare;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.Night;
import eggwright.climate.machine.SetInside;
import eggwright.climate.reading.ReadingPlace;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.machine.OneMachinePage.Link;
import eggwright.desk.part.CautionShown;
import eggwright.desk.picture.ClimateChart.Guide;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.trade.caution.Cautions;
import eggwright.trade.caution.Place;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Puts the page of one machine together. */
final class OneMachine {
    private final Rooms rooms;
    private final Picture picture;
    private final Instant at;
    private final ZoneId zone;
    private final Visit visit;
    private final Words words;

    OneMachine(LiveBook book, Rooms rooms, Visit visit) {
        this.rooms = rooms;
        this.picture = book.picture();
        this.at = book.time().toInstant();
        this.zone = book.zone();
        this.visit = visit;
        this.words = Words.beside(OneMachine.class, visit.language());
    }

    OneMachinePage page(MachineName machine) {
        var channels = rooms.channels(machine);
        var degrees = Degrees.of(picture, Optional.of(machine), channels, visit.language());
        var habits = picture.farm().habits();
        var surroundings = Rooms.surroundings(habits);
        var now = rooms.now(picture, machine, at);
        var sets = new SetWords(at, zone, words);
        var window = Window.of(visit.asked(), at);
        var known = rooms.nights(picture, machine, at);
        var nights = known.nights();
        var nightWords = new NightWords(at, zone, degrees, words);
        return new OneMachinePage(
                machine.text(),
                links(machine),
                new AdviceWords(now, surroundings, zone, degrees, words).advice(),
                new NowWords(at, zone, degrees, words).of(now, surroundings, picture, visit),
                now.sets().stream()
                        .map(set -> sets.of(set, now.advice().sets()))
                        .toList(),
                nights.stream().map(nightWords::of).toList(),
                new ReadingsPart(rooms, new NotedCare(picture), zone, degrees, words)
                        .of(
                                new ReadingPlace.InMachine(machine),
                                picture.machine(machine),
                                surroundings,
                                aims(now),
                                Optional.of(known.band()),
                                window),
                new Calculator(visit.asked(), surroundings, degrees, words)
                        .shown(window, Optional.ofNullable(habits.altitude())),
                cautions(nights));
    }

    private List<CautionShown> cautions(List<Night> nights) {
        var cautions = new ArrayList<CautionShown>();
        cautions.add(new CautionShown(words.say("alarm.title"), words.say("alarm.text"), words.say("alarm.ask")));
        cautions.add(CautionShown.of(Cautions.at(Place.CURRENT_AND_WATER), visit.language()));
        if (nights.stream().anyMatch(night -> night.excursion().kind() == Excursion.Kind.COLD)) {
            cautions.add(CautionShown.of(Cautions.at(Place.FUEL_INDOORS), visit.language()));
        }
        return cautions;
    }

    private List<Link> links(MachineName machine) {
        var links = new ArrayList<Link>();
        if (May.NOTE.lets(visit.visitor())) {
            links.add(new Link(
                    "/notes/climate-noted?machine=" + MachinePaths.encoded(machine.text()), words.say("read")));
            links.add(new Link("/notes/weighed", words.say("weigh")));
        }
        SensorPages.link(rooms, picture, machine, at, words).ifPresent(links::add);
        links.add(new Link(MachinePaths.WET_BULB_TABLE, words.say("wall")));
        return links;
    }

    /**
     * The usual temperature of the species with most eggs, and the humidity that lands what was weighed in its band. No published
     * humidity is drawn: it would be held against a habit that works.
     */
    private Charts.Aims aims(MachineNow now) {
        var most = now.sets().stream().max(Comparator.comparingInt(SetInside::eggs));
        if (most.isEmpty()) {
            return new Charts.Aims(Optional.empty(), List.of());
        }
        double celsius = now.setPoint().temperature().celsius();
        var species = words.species(most.get().species());
        return new Charts.Aims(
                Optional.of(new Guide(celsius, celsius, words.say("guide.temperature", species))),
                new LandingBand(now, Rooms.surroundings(picture.farm().habits()), at)
                        .humidities().stream()
                                .map(band -> new Guide(band.low(), band.high(), words.say("guide.humidity")))
                                .toList());
    }
}
