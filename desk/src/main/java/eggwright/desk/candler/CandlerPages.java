package eggwright.desk.candler;

import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.live.WorkedOut;
import eggwright.desk.who.May;
import eggwright.rates.candler.CandlerReport;
import eggwright.rates.candler.blind.BlindLooks;
import eggwright.rates.candler.blind.TwoPeople;
import eggwright.today.schedule.FarmProfiles;
import java.util.List;

/** Shows what opened eggs tell of each person at the lamp; nothing is written here. */
public final class CandlerPages implements Pages {
    /** Where the page is. */
    public static final String PATH = "/candlers";

    private final WorkedOut<Both> report;

    /** What opened eggs tell of each, and what blind looks tell of two. */
    private record Both(CandlerReport each, List<TwoPeople> two) {}

    public CandlerPages(LiveBook book) {
        report = new WorkedOut<>(
                book,
                now -> book.ask(ledger -> {
                    var picture = ledger.picture();
                    var profiles = FarmProfiles.of(picture.farm());
                    var entries = ledger.inOrder();
                    return new Both(
                            CandlerReport.of(picture, entries, BlindLooks.ids(picture), profiles::of),
                            TwoPeople.of(BlindLooks.pairs(picture, entries)));
                }));
    }

    @Override
    public void addTo(Routes routes) {
        routes.read(PATH, May.READ, this::all);
    }

    private Answer all(Visit visit) {
        return Answer.page("candler/page.jte", page(visit));
    }

    private CandlersPage page(Visit visit) {
        var both = report.get();
        return new PeopleWorded(both.each(), visit.language())
                .page()
                .withPairs(new PairsWorded(visit.language()).pairs(both.two()));
    }
}
