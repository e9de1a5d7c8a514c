package eggwright.desk.machine;

import eggwright.climate.air.NotedCare;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.machine.Alert;
import eggwright.climate.machine.Watch;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.desk.Answer;
import eggwright.desk.Place;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.machine.OneMachinePage.Figure;
import eggwright.desk.machine.OneMachinePage.Link;
import eggwright.desk.part.CautionShown;
import eggwright.desk.who.May;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.trade.RoomHeat;
import eggwright.trade.caution.Cautions;
import eggwright.trade.source.Sourced;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The egg room and the brooder, which have sensors like machines, and eggs or chicks in place of sets. */
final class RoomPages {
    /** An older reading is not of now: ours. */
    private static final Duration NOW = Duration.ofHours(2);

    private static final Duration SENSOR_LOOKED_BACK = Duration.ofDays(1);

    private final LiveBook book;
    private final Rooms rooms;

    RoomPages(LiveBook book, Rooms rooms) {
        this.book = book;
        this.rooms = rooms;
    }

    void addTo(Routes routes) {
        routes.read(
                MachinePaths.EGG_ROOM,
                May.READ,
                visit -> Answer.page("machine/room.jte", page(new ReadingPlace.EggRoom(), visit)));
        routes.read(
                MachinePaths.BROODER,
                May.READ,
                visit -> Answer.page("machine/room.jte", page(new ReadingPlace.Brooder(), visit)));
    }

    private RoomPage page(ReadingPlace place, Visit visit) {
        var words = Words.beside(RoomPages.class, visit.language());
        var picture = book.picture();
        var at = book.time().toInstant();
        var degrees = Degrees.of(picture, Optional.empty(), rooms.channels(place), visit.language());
        var standing = rooms.standing(picture, place, at);
        var figures = figures(place, at, degrees, words);
        var isEggRoom = place instanceof ReadingPlace.EggRoom;
        return new RoomPage(
                isEggRoom ? Place.EGG_ROOM : Place.MACHINES,
                words.say(isEggRoom ? "room.eggRoom.title" : "room.brooder.title"),
                headline(place, standing, figures, degrees, words),
                List.of(trade(place, degrees, words), words.say("room.habit")),
                links(place, words),
                figures,
                new ReadingsPart(rooms, new NotedCare(picture), book.zone(), degrees, words)
                        .of(
                                place,
                                Optional.empty(),
                                Rooms.surroundings(picture.farm().habits()),
                                new Charts.Aims(Optional.empty(), List.of()),
                                Optional.empty(),
                                Window.of(visit.asked(), at)),
                cautions(isEggRoom, visit, words));
    }

    private static List<Link> links(ReadingPlace place, Words words) {
        var links = new ArrayList<Link>();
        links.add(new Link(MachinePaths.sensors(place), words.say("room.sensors")));
        if (place instanceof ReadingPlace.EggRoom) {
            links.add(new Link("/egg-room", words.say("room.eggs")));
            links.add(new Link(MachinePaths.WET_BULB_TABLE, words.say("wall")));
        }
        return links;
    }

    private static List<CautionShown> cautions(boolean isEggRoom, Visit visit, Words words) {
        var alarm = new CautionShown(words.say("alarm.title"), words.say("alarm.text"), words.say("alarm.ask"));
        return isEggRoom
                ? List.of(alarm)
                : List.of(
                        alarm,
                        CautionShown.of(Cautions.at(eggwright.trade.caution.Place.HEAT_LAMPS), visit.language()));
    }

    private static String headline(
            ReadingPlace place, Watch.Standing standing, List<Figure> figures, Degrees degrees, Words words) {
        var name = RoomNames.say(place, words);
        return switch (standing) {
            case Watch.Standing.Outside(var alert) ->
                words.say(
                        (alert.kind() == Excursion.Kind.COLD ? "room.cold" : "room.hot")
                                + (alert.hearing() == Alert.Hearing.NOW ? "" : ".silent"),
                        name,
                        degrees.say(alert.lastCelsius()));
            case Watch.Standing.Inside inside -> words.say("room.holds", name);
            case Watch.Standing.NotTold not -> words.say(figures.isEmpty() ? "room.notRead" : "room.read", name);
        };
    }

    private static String trade(ReadingPlace place, Degrees degrees, Words words) {
        if (place instanceof ReadingPlace.EggRoom) {
            Sourced<RoomHeat> heat = RoomHeat.ofEggRoom();
            return words.say(
                    "room.eggRoom.trade",
                    degrees.say(heat.value().lowCelsius()),
                    degrees.say(heat.value().highCelsius()),
                    heat.source().words());
        }
        return words.say(
                "room.brooder.trade",
                degrees.say(RoomHeat.ofBrooder(0).orElseThrow().value().lowCelsius()),
                degrees.say(RoomHeat.ofBrooder(40).orElseThrow().value().lowCelsius()));
    }

    /** The last that each sensor said, where that is of now. */
    private List<Figure> figures(ReadingPlace place, Instant at, Degrees degrees, Words words) {
        var figures = new ArrayList<Figure>();
        for (var channel : rooms.channels(place)) {
            last(channel, at).ifPresent(last -> {
                figures.add(new Figure(
                        words.say("quantity." + channel.quantity().word()),
                        say(channel.quantity(), last.standard(), degrees),
                        words.say(
                                "room.readAt",
                                channel.sensor().text(),
                                Days.in(words.language()).stamp(last.at().atZone(book.zone())))));
            });
        }
        return figures;
    }

    /** @param standard in standard units, corrected */
    private record Last(Instant at, double standard) {}

    private Optional<Last> last(Channel channel, Instant at) {
        var care = new NotedCare(book.picture());
        var read = care.sifted(rooms.readings(), channel, at.minus(SENSOR_LOOKED_BACK), at)
                .good();
        if (read.isEmpty() || read.at(read.count() - 1).isBefore(at.minus(NOW))) {
            return Optional.empty();
        }
        var when = read.at(read.count() - 1);
        return Optional.of(new Last(
                when,
                channel.unit().standard(read.value(read.count() - 1))
                        + care.corrections(channel).at(when)));
    }

    private static String say(Quantity quantity, double standard, Degrees degrees) {
        return switch (quantity) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> degrees.say(standard);
            case HUMIDITY -> degrees.number(standard) + "\u00a0%";
            case PRESSURE -> degrees.number(standard) + "\u00a0hPa";
        };
    }
}
