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
import eggwright.desk.picture.Picture;
import eggwright.desk.rate.RateBook;
import eggwright.desk.rate.RatePages;
import eggwright.desk.who.May;
import eggwright.desk.words.Days;
import eggwright.rates.Dimension;
import java.util.ArrayList;
import java.util.List;

/** The pens: their birds, and what their eggs showed. */
final class PenPages implements Pages {
    private final LiveBook book;
    private final RateBook rates;

    PenPages(LiveBook book, RateBook rates) {
        this.book = book;
        this.rates = rates;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/pens", May.READ, this::pens);
    }

    private Answer pens(Visit visit) {
        var words = Shown.words(visit);
        var days = Days.in(visit.language());
        var rows = new ArrayList<List<Cell>>();
        for (var pen : book.picture().pens().values()) {
            var species = pen.species();
            rows.add(List.of(
                    new Cell(pen.pen().text(), ratesOf(pen.pen().text())),
                    Cell.of(species == null ? "" : words.species(species)),
                    Cell.of(words.say("birds", pen.cocks(), pen.hens())),
                    Cell.of(pen.closedOn() == null ? "" : words.say("closed", days.day(pen.closedOn())))));
        }
        return Shown.page(new LedgerPage(
                Place.PENS,
                words.say("pens.title"),
                words.say("pens.lead"),
                List.of(
                        new Link("/notes/pen-opened", words.say("pens.new")),
                        new Link("/notes/pen-changed", words.say("pens.change")),
                        new Link(RatePages.path(Dimension.PEN), words.say("pens.rates"))),
                rates.fertility(Dimension.PEN, visit.language()).stream()
                        .<Picture>map(plot -> plot)
                        .toList(),
                List.of(new Sheet(
                        words.say("pens.birds"),
                        rows.isEmpty() ? words.say("pens.none") : "",
                        List.of(
                                words.say("head.pen"),
                                words.say("head.species"),
                                words.say("head.birds"),
                                words.say("head.note")),
                        rows))));
    }

    /** Where the rates of a pen are; nowhere while none of its eggs were set. */
    private String ratesOf(String pen) {
        return rates.knows(Dimension.PEN, pen) ? RatePages.path(Dimension.PEN, pen) : "";
    }
}
