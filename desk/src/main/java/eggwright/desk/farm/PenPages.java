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
import eggwright.desk.live.WorkedOut;
import eggwright.desk.who.May;
import eggwright.rates.Dimension;
import eggwright.rates.RateReport;
import java.util.ArrayList;
import java.util.List;

/** The pens: their birds, and what their eggs showed. */
final class PenPages implements Pages {
    private final LiveBook book;
    private final WorkedOut<RateReport> rates;

    PenPages(LiveBook book) {
        this.book = book;
        this.rates = new WorkedOut<>(book, now -> RateReport.of(now.picture(), Dimension.PEN));
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/pens", May.READ, this::pens);
    }

    private Answer pens(Visit visit) {
        var words = Shown.words(visit);
        var rows = new ArrayList<List<Cell>>();
        for (var pen : book.picture().pens().values()) {
            var species = pen.species();
            rows.add(List.of(
                    Cell.of(pen.pen()),
                    Cell.of(species == null ? "" : species.word()),
                    Cell.of(words.say("birds", pen.cocks(), pen.hens())),
                    Cell.of(pen.closedOn() == null ? "" : words.say("closed", Shown.DAY.format(pen.closedOn())))));
        }
        var shown = new ArrayList<List<Cell>>();
        for (var group : rates.get().groups()) {
            shown.add(List.of(
                    Cell.of(group.key()),
                    Cell.of(Shown.rate(group.fertility(), visit.language(), words)),
                    Cell.of(words.say("basis." + group.basis().word())),
                    Cell.of(Shown.rate(group.hatchOfFertile(), visit.language(), words))));
        }
        return Shown.page(new LedgerPage(
                Place.PENS,
                words.say("pens.title"),
                words.say("pens.lead"),
                List.of(
                        new Link("/notes/pen-opened", words.say("pens.new")),
                        new Link("/notes/pen-changed", words.say("pens.change"))),
                List.of(),
                List.of(
                        new Sheet(
                                words.say("pens.birds"),
                                rows.isEmpty() ? words.say("pens.none") : "",
                                List.of(
                                        words.say("head.pen"),
                                        words.say("head.species"),
                                        words.say("head.birds"),
                                        words.say("head.note")),
                                rows),
                        new Sheet(
                                words.say("pens.rates"),
                                words.say("pens.ratesText"),
                                List.of(
                                        words.say("head.pen"),
                                        words.say("head.fertility"),
                                        words.say("head.basis"),
                                        words.say("hatchOfFertile")),
                                shown))));
    }
}
