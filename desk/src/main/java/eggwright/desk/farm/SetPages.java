package eggwright.desk.farm;

import eggwright.book.name.SetName;
import eggwright.book.picture.Fate;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.SetPicture;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Place;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.farm.LedgerPage.Cell;
import eggwright.desk.farm.LedgerPage.Link;
import eggwright.desk.farm.LedgerPage.Sheet;
import eggwright.desk.ledger.EntryWords;
import eggwright.desk.live.LiveBook;
import eggwright.desk.picture.AccountBar;
import eggwright.desk.picture.Numbers;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.rates.Dimension;
import eggwright.rates.RateReport;
import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** All sets, and one set with its account, rates and story. */
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
        var rows = new ArrayList<List<Cell>>();
        var all = book.picture().sets().values().stream()
                .sorted(Comparator.comparing(SetPicture::setOn).reversed())
                .toList();
        for (var set : all) {
            var total = RateReport.total(book.picture(), List.of(set.account()));
            rows.add(List.of(
                    new Cell(set.name().text(), Shown.path(set)),
                    Cell.of(Shown.DAY.format(set.setOn())),
                    Cell.of(set.eggsSet()),
                    Cell.of(Shown.rate(total.fertility(), visit.language(), words)),
                    Cell.of(
                            set.isRunning()
                                    ? chicks.range(set, words)
                                    : Shown.rate(total.hatchOfSet(), visit.language(), words))));
        }
        var sheet = new Sheet(
                "",
                rows.isEmpty() ? words.say("sets.none") : "",
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
                words.say("sets.lead"),
                List.of(new Link("/notes/eggs-set", words.say("sets.new"))),
                List.of(),
                List.of(sheet)));
    }

    private Answer set(Visit visit) {
        var words = Shown.words(visit);
        Optional<SetPicture> found;
        try {
            found = book.picture().set(new SetName(visit.at("set")));
        } catch (OutOfRange notAName) {
            found = Optional.empty();
        }
        return found.map(set -> Shown.page(one(set, words, visit.language())))
                .orElseGet(() -> Answer.notThere(words.say("set.named", visit.at("set"))));
    }

    private LedgerPage one(SetPicture set, Words words, Locale language) {
        var today = book.time().toLocalDate();
        var total = RateReport.total(book.picture(), List.of(set.account()));
        var asked = "?set=" + Shown.encoded(set.name().text());
        var loads = new ArrayList<List<Cell>>();
        for (var load : set.loads().values()) {
            var now = load.eggsNow();
            loads.add(List.of(
                    new Cell(
                            load.ref().tray().text(),
                            "/notes/looked" + asked + "&tray="
                                    + Shown.encoded(load.ref().tray().text())),
                    Cell.of(String.join(
                            ", ",
                            load.parcels().stream()
                                    .map(SetPages::pen)
                                    .distinct()
                                    .toList())),
                    Cell.of(load.place()
                            .map(p -> (p.machine() == null ? "" : p.machine().text())
                                    + (p.section() == null
                                            ? ""
                                            : ", " + p.section().text()))
                            .orElse("")),
                    Cell.of(load.eggsSet()),
                    Cell.of(now == null ? words.say("together") : now)));
        }
        var rates = List.of(
                List.of(
                        Cell.of(words.say("fertility." + total.basis().word())),
                        Cell.of(Shown.rate(total.fertility(), language, words))),
                List.of(Cell.of(words.say("hatchOfSet")), Cell.of(Shown.rate(total.hatchOfSet(), language, words))),
                List.of(
                        Cell.of(words.say("hatchOfFertile")),
                        Cell.of(Shown.rate(total.hatchOfFertile(), language, words))),
                List.of(Cell.of(words.say("chicksOfSet")), Cell.of(Shown.rate(total.chicksOfSet(), language, words))),
                List.of(
                        Cell.of(words.say("forecast")),
                        Cell.of(set.isRunning() ? chicks.range(set, words) : words.say("over"))));
        return new LedgerPage(
                Place.SETS,
                words.say("set.title", set.name().text()),
                words.say("set.lead", Shown.DAY.format(set.setOn()), Shown.day(set, today), set.eggsSet()),
                List.of(
                        new Link("/notes/looked" + asked, words.say("set.candle")),
                        new Link(
                                "/notes/eggs-moved?from_set="
                                        + Shown.encoded(set.name().text()),
                                words.say("set.pool")),
                        new Link("/notes/transferred" + asked, words.say("set.transfer")),
                        new Link("/notes/taken-off" + asked, words.say("set.takeOff")),
                        new Link("/notes/broken-out" + asked, words.say("set.open"))),
                List.of(bar(set, words)),
                List.of(
                        new Sheet(
                                words.say("set.loads"),
                                "",
                                List.of(
                                        words.say("head.tray"),
                                        words.say("head.pen"),
                                        words.say("head.where"),
                                        words.say("head.eggs"),
                                        words.say("head.now")),
                                loads),
                        new Sheet(
                                words.say("set.rates"),
                                "",
                                List.of(words.say("head.rate"), words.say("head.value")),
                                rates),
                        new Sheet(
                                words.say("set.story"),
                                "",
                                List.of(words.say("head.when"), words.say("head.what"), words.say("head.who")),
                                story(set, language))));
    }

    private static String pen(Parcel parcel) {
        var pen = parcel.lot().pen();
        return pen == null ? Dimension.NOT_RECORDED : pen.text();
    }

    private List<List<Cell>> story(SetPicture set, Locale language) {
        var lines = new EntryWords(language);
        var zone = book.time().getZone();
        return book.ask(ledger -> set.story().stream()
                .flatMap(id -> ledger.effective(id).stream())
                .map(e -> List.of(
                        Cell.of(Shown.STAMP.format(e.at().atZoneSameInstant(zone))),
                        new Cell(lines.line(e.payload()), "/book/" + e.id()),
                        Cell.of(e.entry().who().text())))
                .toList());
    }

    private static AccountBar bar(SetPicture set, Words words) {
        var parts = new ArrayList<AccountBar.Part>();
        var numbers = new ArrayList<List<String>>();
        int eggs = set.account().eggsSet();
        for (var fate : Fate.values()) {
            int count = set.account().eggs(fate);
            if (count > 0) {
                var label = words.say("fate." + fate.word());
                parts.add(new AccountBar.Part(label, count, Fates.ink(fate)));
                numbers.add(List.of(label, Integer.toString(count)));
            }
        }
        return new AccountBar(
                "account",
                words.say("account.title", set.name().text()),
                words.say("account.says", eggs),
                eggs,
                eggs,
                parts,
                List.of(),
                "",
                words.say("account.total", eggs),
                new Numbers(List.of(words.say("head.fate"), words.say("head.eggs")), numbers));
    }
}
