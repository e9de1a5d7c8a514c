package eggwright.desk.farm;

import eggwright.book.name.SetName;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SetPicture;
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
import eggwright.rates.Dimension;
import eggwright.rates.GroupRates;
import eggwright.rates.RateReport;
import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** All sets with the season by week, and one set. */
final class SetPages implements Pages {
    private final LiveBook book;
    private final Chicks chicks;

    SetPages(LiveBook book, Chicks chicks) {
        this.book = book;
        this.chicks = chicks;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/sets", May.READ, this::sets);
        routes.read("/sets/{set}", May.READ, this::set);
    }

    private Answer sets(Visit visit) {
        var words = Shown.words(visit);
        var days = Days.in(visit.language());
        var rows = new ArrayList<List<Cell>>();
        var all = book.picture().sets().values().stream()
                .sorted(Comparator.comparing(SetPicture::setOn).reversed())
                .toList();
        for (var set : all) {
            var rates = rates(book.picture(), set);
            rows.add(List.of(
                    new Cell(set.name().text(), Shown.path(set)),
                    Cell.of(days.day(set.setOn())),
                    Cell.of(set.eggsSet()),
                    Cell.of(Shown.rate(rates.fertility(), visit.language())),
                    Cell.of(
                            set.isRunning()
                                    ? chicks.range(set, words)
                                    : Shown.rate(rates.hatchOfSet(), visit.language()))));
        }
        var sheet = new Sheet(
                words.say("sets.all"),
                rows.isEmpty() ? words.say("sets.none") : words.say("sets.lead"),
                List.of(
                        words.say("head.set"),
                        words.say("head.setOn"),
                        words.say("head.eggs"),
                        words.say("head.fertility"),
                        words.say("head.hatch")),
                rows);
        return Shown.page(new LedgerPage(
                Place.SETS,
                words.say("sets.title"),
                words.say("sets.season"),
                List.of(new Link("/notes/eggs-set", words.say("sets.new"))),
                new SeasonPicture(chicks, visit.language())
                        .of(book.picture(), book.time().toLocalDate()).stream()
                                .<eggwright.desk.picture.Picture>map(season -> season)
                                .toList(),
                List.of(sheet)));
    }

    /** Rates of this set alone; what was counted together with others says nothing of it. */
    static GroupRates rates(Picture picture, SetPicture set) {
        return RateReport.of(picture, List.of(set.account()), Dimension.SET).groups().stream()
                .filter(g -> g.key().equals(set.name().text()))
                .findFirst()
                .orElseGet(() -> RateReport.total(picture, List.of()));
    }

    private Answer set(Visit visit) {
        var words = Shown.words(visit);
        Optional<SetPicture> found;
        try {
            found = book.picture().set(new SetName(visit.at("set")));
        } catch (OutOfRange notAName) {
            found = Optional.empty();
        }
        return found.map(set -> Shown.page(new OneSet(book, chicks, visit.language()).page(set)))
                .orElseGet(() -> Answer.notThere(words.say("set.named", visit.at("set"))));
    }
}
