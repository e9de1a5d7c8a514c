package eggwright.desk.farm;

import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.SetPicture;
import eggwright.desk.Place;
import eggwright.desk.farm.LedgerPage.Cell;
import eggwright.desk.farm.LedgerPage.Link;
import eggwright.desk.farm.LedgerPage.Sheet;
import eggwright.desk.ledger.EntryWords;
import eggwright.desk.live.LiveBook;
import eggwright.desk.machine.MachinePaths;
import eggwright.desk.picture.AccountBar;
import eggwright.desk.rate.Accounts;
import eggwright.desk.rate.DeathRows;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.rates.Dimension;
import eggwright.rates.account.AccountLine;
import eggwright.rates.account.AccountLines;
import eggwright.rates.account.DeathWindows;
import eggwright.today.schedule.FarmProfiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** One set with its account, trays, rates, deaths and story. */
final class OneSet {
    private final LiveBook book;
    private final Chicks chicks;
    private final Locale language;
    private final Words words;
    private final Days days;

    OneSet(LiveBook book, Chicks chicks, Locale language) {
        this.book = book;
        this.chicks = chicks;
        this.language = language;
        this.words = Words.beside(OneSet.class, language);
        this.days = Days.in(language);
    }

    LedgerPage page(SetPicture set) {
        var asked = "?set=" + Shown.encoded(set.name().text());
        return new LedgerPage(
                Place.SETS,
                words.say("set.title", set.name().text()),
                words.say(
                        "set.lead",
                        days.day(set.setOn()),
                        Shown.day(set, book.time().toLocalDate()),
                        set.eggsSet()),
                List.of(
                        new Link("/notes/looked" + asked, words.say("set.candle")),
                        new Link(
                                "/notes/eggs-moved?from_set="
                                        + Shown.encoded(set.name().text()),
                                words.say("set.pool")),
                        new Link("/notes/transferred" + asked, words.say("set.transfer")),
                        new Link("/notes/taken-off" + asked, words.say("set.takeOff")),
                        new Link("/notes/broken-out" + asked, words.say("set.open")),
                        new Link(ForeseenPages.path(set), words.say("set.foreseen"))),
                bar(set).stream().<eggwright.desk.picture.Picture>map(b -> b).toList(),
                List.of(trays(set, asked), rates(set), deaths(set), story(set)));
    }

    private Optional<AccountBar> bar(SetPicture set) {
        var profiles = FarmProfiles.of(book.picture().farm());
        var lines = AccountLines.ofSet(book.picture(), set.name());
        int eggs = lines.eggsSet() + lines.fromOthers();
        if (eggs == 0) {
            return Optional.empty();
        }
        int looked = lastLook(set);
        var byThen = set.isRunning() && looked > 0;
        var expected = byThen
                ? new Accounts.Expectation(words.say("expected.by", looked), lines.expectedBy(looked, profiles::of))
                : new Accounts.Expectation(words.say("expected.end"), lines.expected(profiles::of));
        return Optional.of(Accounts.bar(
                words.say("account.title", set.name().text()),
                words.say(byThen ? "account.saysBy" : "account.saysEnd", eggs, looked),
                eggs,
                lines.lines().stream().collect(Collectors.toMap(AccountLine::fate, AccountLine::eggs)),
                lines.countedWithOthers(),
                Optional.of(expected),
                language));
    }

    private static int lastLook(SetPicture set) {
        return set.loads().values().stream()
                .flatMap(l -> l.looks().stream())
                .mapToInt(LookTaken::day)
                .max()
                .orElse(0);
    }

    private Sheet trays(SetPicture set, String asked) {
        var loads = new ArrayList<List<Cell>>();
        for (var load : set.loads().values()) {
            var now = load.eggsNow();
            var tray = load.ref().tray().text();
            loads.add(List.of(
                    new Cell(tray, "/notes/looked" + asked + "&tray=" + Shown.encoded(tray)),
                    Cell.of(load.parcels().stream().map(OneSet::pen).distinct().collect(Collectors.joining(", "))),
                    where(load),
                    Cell.of(load.eggsSet()),
                    Cell.of(now == null ? words.say("together") : now)));
        }
        return new Sheet(
                words.say("set.loads"),
                "",
                List.of(
                        words.say("head.tray"),
                        words.say("head.pen"),
                        words.say("head.where"),
                        words.say("head.eggs"),
                        words.say("head.now")),
                loads);
    }

    private static Cell where(LoadPicture load) {
        return load.place()
                .map(p -> {
                    var machine = p.machine();
                    var section = p.section() == null ? "" : ", " + p.section().text();
                    return machine == null
                            ? Cell.of(section)
                            : new Cell(machine.text() + section, MachinePaths.of(machine));
                })
                .orElse(Cell.of(""));
    }

    private static String pen(Parcel parcel) {
        var pen = parcel.lot().pen();
        return pen == null ? Dimension.NOT_RECORDED : pen.text();
    }

    private Sheet rates(SetPicture set) {
        var rates = SetPages.rates(book.picture(), set);
        return new Sheet(
                words.say("set.rates"),
                "",
                List.of(words.say("head.rate"), words.say("head.value")),
                List.of(
                        List.of(
                                Cell.of(words.say("fertility." + rates.basis().word())),
                                Cell.of(Shown.rate(rates.fertility(), language))),
                        List.of(Cell.of(words.say("hatchOfSet")), Cell.of(Shown.rate(rates.hatchOfSet(), language))),
                        List.of(
                                Cell.of(words.say("hatchOfFertile")),
                                Cell.of(Shown.rate(rates.hatchOfFertile(), language))),
                        List.of(Cell.of(words.say("chicksOfSet")), Cell.of(Shown.rate(rates.chicksOfSet(), language))),
                        List.of(
                                Cell.of(words.say("forecast")),
                                Cell.of(set.isRunning() ? chicks.range(set, words) : words.say("over")))));
    }

    private Sheet deaths(SetPicture set) {
        var profiles = FarmProfiles.of(book.picture().farm());
        var table = new DeathRows(profiles::of, language).of(DeathWindows.of(book.picture(), set.name(), profiles::of));
        return new Sheet(
                words.say("set.deaths"),
                words.say(table.rows().isEmpty() ? "set.noDeaths" : "set.deathsText"),
                table.heads(),
                table.rows().stream()
                        .map(row -> row.stream().map(c -> Cell.of(c.text())).toList())
                        .toList());
    }

    private Sheet story(SetPicture set) {
        var lines = new EntryWords(language);
        var zone = book.time().getZone();
        var rows = book.ask(ledger -> set.story().stream()
                .flatMap(id -> ledger.effective(id).stream())
                .map(e -> List.of(
                        Cell.of(days.stamp(e.at().atZoneSameInstant(zone))),
                        new Cell(lines.line(e.payload()), "/book/" + e.id()),
                        Cell.of(e.entry().who().text())))
                .toList());
        return new Sheet(
                words.say("set.story"),
                "",
                List.of(words.say("head.when"), words.say("head.what"), words.say("head.who")),
                rows);
    }
}
