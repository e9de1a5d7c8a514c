package eggwright.desk.farm;

import eggwright.book.picture.Picture;
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
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.rates.Dimension;
import eggwright.rates.eggroom.RejectRates;
import eggwright.units.Rate;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** The egg room: what waits, how old, what was rejected. */
final class EggRoomPages implements Pages {
    private final LiveBook book;

    EggRoomPages(LiveBook book) {
        this.book = book;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/egg-room", May.READ, this::eggRoom);
    }

    private Answer eggRoom(Visit visit) {
        var words = Shown.words(visit);
        var byWeek = byWeek(book.picture(), visit);
        var byPen = byPen(book.picture(), words);
        return Shown.page(new LedgerPage(
                Place.EGG_ROOM,
                words.say("eggRoom.title"),
                words.say("eggRoom.lead"),
                List.of(
                        new Link("/notes/eggs-gathered", words.say("eggRoom.gather")),
                        new Link("/notes/eggs-set", words.say("sets.new")),
                        new Link("/notes/eggs-counted", words.say("eggRoom.count")),
                        new Link("/air/egg-room", words.say("eggRoom.air"))),
                List.of(),
                List.of(
                        ShelfSheet.of(book.picture(), words, book.time().toLocalDate()),
                        rejects(words.say("eggRoom.rejectsByWeek"), words.say("head.gatheredIn"), byWeek, visit),
                        rejects(words.say("eggRoom.rejectsByPen"), words.say("head.pen"), byPen, visit))));
    }

    private static Sheet rejects(String title, String head, List<Named> rates, Visit visit) {
        var words = Shown.words(visit);
        return new Sheet(
                title,
                rates.isEmpty() ? words.say("eggRoom.noRejects") : words.say("eggRoom.rejectsText"),
                List.of(head, words.say("head.rejected")),
                rates.stream()
                        .map(r -> List.of(Cell.of(r.name()), Cell.of(Shown.rate(r.rejected(), visit.language()))))
                        .toList());
    }

    private record Named(String name, Rate rejected) {}

    /** Newest first, as a person asks for this week before last. */
    private static List<Named> byWeek(Picture picture, Visit visit) {
        var days = Days.in(visit.language());
        return RejectRates.byWeek(picture).reversed().stream()
                .map(r -> new Named(
                        days.week(LocalDate.parse(r.week() + "-1", DateTimeFormatter.ISO_WEEK_DATE)), r.rejected()))
                .toList();
    }

    private static List<Named> byPen(Picture picture, Words words) {
        return RejectRates.byPen(picture).stream()
                .map(r ->
                        new Named(r.pen().equals(Dimension.NOT_RECORDED) ? words.say("noPen") : r.pen(), r.rejected()))
                .toList();
    }
}
