package eggwright.desk.candler;

import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.live.WorkedOut;
import eggwright.desk.who.May;
import eggwright.rates.candler.CandlerReport;
import eggwright.today.schedule.FarmProfiles;
import java.util.Set;

/** Shows what opened eggs tell of each person at the lamp; nothing is written here. */
public final class CandlerPages implements Pages {
    /** Where the page is. */
    public static final String PATH = "/candlers";

    private final WorkedOut<CandlerReport> report;

    public CandlerPages(LiveBook book) {
        report = new WorkedOut<>(
                book,
                now -> book.ask(ledger -> {
                    var picture = ledger.picture();
                    var profiles = FarmProfiles.of(picture.farm());
                    return CandlerReport.of(picture, ledger.inOrder(), Set.of(), profiles::of);
                }));
    }

    @Override
    public void addTo(Routes routes) {
        routes.read(PATH, May.READ, this::all);
    }

    private Answer all(Visit visit) {
        return Answer.page("candler/page.jte", new PeopleWorded(report.get(), visit.language()).page());
    }
}
