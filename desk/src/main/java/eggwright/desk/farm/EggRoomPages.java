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
import eggwright.units.Rate;
import java.util.ArrayList;
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
        var rejects = new ArrayList<List<Cell>>();
        for (var shelf : book.picture().eggRoom().values()) {
            int rejected = shelf.gatheredRejected();
            int all = rejected + shelf.gatheredKept();
            if (all > 0) {
                rejects.add(List.of(
                        Cell.of(ShelfSheet.name(shelf, words)),
                        Cell.of(all),
                        Cell.of(Shown.rate(new Rate(rejected, all), visit.language(), words))));
            }
        }
        return Shown.page(new LedgerPage(
                Place.EGG_ROOM,
                words.say("eggRoom.title"),
                words.say("eggRoom.lead"),
                List.of(
                        new Link("/notes/eggs-gathered", words.say("eggRoom.gather")),
                        new Link("/notes/eggs-set", words.say("sets.new")),
                        new Link("/notes/eggs-counted", words.say("eggRoom.count"))),
                List.of(),
                List.of(
                        ShelfSheet.of(book.picture(), words, book.time().toLocalDate()),
                        new Sheet(
                                words.say("eggRoom.rejects"),
                                "",
                                List.of(words.say("head.pen"), words.say("head.gathered"), words.say("head.rejected")),
                                rejects))));
    }
}
