package eggwright.desk.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.Picture;
import eggwright.climate.care.PlaceSensors;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingPlace;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.machine.OneMachinePage.Choice;
import eggwright.desk.machine.OneMachinePage.Link;
import eggwright.desk.machine.OneMachinePage.Standing;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.units.OutOfRange;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The sensors: of each place by itself, and a list of the places. */
final class SensorPages implements Pages {
    private static final String PAST = "past";
    private static final String YEAR = "year";
    /** The last season too. */
    private static final Duration LONG = Duration.ofDays(400);

    private final LiveBook book;
    private final Rooms rooms;

    SensorPages(LiveBook book, Rooms rooms) {
        this.book = book;
        this.rooms = rooms;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read(MachinePaths.SENSORS, May.READ, this::places);
        routes.read(MachinePaths.ALL + "/{machine}/sensors", May.READ, this::machine);
        routes.read(
                MachinePaths.sensors(new ReadingPlace.EggRoom()),
                May.READ,
                visit -> page(visit, new ReadingPlace.EggRoom()));
        routes.read(
                MachinePaths.sensors(new ReadingPlace.Brooder()),
                May.READ,
                visit -> page(visit, new ReadingPlace.Brooder()));
    }

    /** From the page of a machine, saying how many want a look; empty where it has no sensor. */
    static Optional<Link> link(Rooms rooms, Picture picture, MachineName machine, Instant at, Words words) {
        if (rooms.channels(machine).isEmpty()) {
            return Optional.empty();
        }
        var place = new ReadingPlace.InMachine(machine);
        return Optional.of(
                new Link(MachinePaths.sensors(place), words.say("sensors.link", rooms.looksDue(picture, place, at))));
    }

    private static Words words(Visit visit) {
        return Words.beside(SensorPages.class, visit.language());
    }

    private Answer machine(Visit visit) {
        var notThere = Answer.notThere(words(visit).say("named", visit.at("machine")));
        try {
            var machine = new MachineName(visit.at("machine"));
            return rooms.knows(book.picture(), machine) ? page(visit, new ReadingPlace.InMachine(machine)) : notThere;
        } catch (OutOfRange notAName) {
            return notThere;
        }
    }

    private Answer page(Visit visit, ReadingPlace place) {
        var words = words(visit);
        var picture = book.picture();
        var at = book.time().toInstant();
        boolean isLong = visit.asked().text(PAST).equals(YEAR);
        var sensors = rooms.sensors(picture, place, at.minus(isLong ? LONG : PlaceSensors.LOOKED_BACK), at);
        var degrees = Degrees.of(
                picture, machine(place), sensors.stream().map(s -> s.channel()).toList(), visit.language());
        var told = new SensorWords(
                picture,
                place,
                book.zone(),
                degrees,
                words,
                May.NOTE.lets(visit.visitor()) ? SensorWords.Hand.MAY_NOTE : SensorWords.Hand.LOOKS_ON);
        var path = MachinePaths.sensors(place);
        return Answer.page(
                "machine/sensors.jte",
                new SensorsPage(
                        words.say("sensors.of", name(place, words)),
                        sensors.isEmpty()
                                ? words.say("sensors.none")
                                : lead(sensors.size(), told.brief(sensors), words),
                        List.of(
                                new Choice(
                                        path,
                                        words.say("sensors.past.usual"),
                                        isLong ? Standing.OTHER : Standing.SHOWN),
                                new Choice(
                                        path + "?" + PAST + "=" + YEAR,
                                        words.say("sensors.past.year"),
                                        isLong ? Standing.SHOWN : Standing.OTHER)),
                        told.of(sensors),
                        sensors.isEmpty() ? List.of() : told.rules(),
                        back(place, words)));
    }

    private static String lead(int count, String brief, Words words) {
        return words.say("sensors.count", count) + " " + brief;
    }

    private static Optional<MachineName> machine(ReadingPlace place) {
        return place instanceof ReadingPlace.InMachine(var machine) ? Optional.of(machine) : Optional.empty();
    }

    private static String name(ReadingPlace place, Words words) {
        return switch (place) {
            case ReadingPlace.InMachine(var machine) -> machine.text();
            case ReadingPlace.EggRoom() -> words.say("place.eggRoom");
            case ReadingPlace.Brooder() -> words.say("place.brooder");
        };
    }

    private static Link back(ReadingPlace place, Words words) {
        return place instanceof ReadingPlace.InMachine(var machine)
                ? new Link(MachinePaths.of(machine), words.say("look", machine.text()))
                : new Link(MachinePaths.SENSORS, words.say("sensors.all"));
    }

    private Answer places(Visit visit) {
        var words = words(visit);
        var picture = book.picture();
        var at = book.time().toInstant();
        var places = new ArrayList<SensorPlacesPage.Place>();
        for (var place : all(picture.machines().keySet())) {
            var sensors = rooms.sensors(picture, place, at.minus(PlaceSensors.LOOKED_BACK), at);
            places.add(new SensorPlacesPage.Place(
                    MachinePaths.sensors(place),
                    name(place, words),
                    sensors.isEmpty()
                            ? words.say("sensors.noneYet")
                            : lead(sensors.size(), SensorWords.brief(sensors, words), words)));
        }
        return Answer.page("machine/sensor-places.jte", new SensorPlacesPage(places));
    }

    /** The machines of the book and of the readings, then egg room and brooder. */
    private List<ReadingPlace> all(Set<MachineName> noted) {
        var machines = new TreeSet<>(noted);
        rooms.readings().channels().stream()
                .map(Channel::place)
                .flatMap(place -> machine(place).stream())
                .forEach(machines::add);
        var places = new ArrayList<ReadingPlace>();
        machines.forEach(machine -> places.add(new ReadingPlace.InMachine(machine)));
        places.add(new ReadingPlace.EggRoom());
        places.add(new ReadingPlace.Brooder());
        return places;
    }
}
