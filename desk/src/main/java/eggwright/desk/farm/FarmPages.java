package eggwright.desk.farm;

import eggwright.book.name.SetName;
import eggwright.book.picture.Fate;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.SetPicture;
import eggwright.book.picture.ShelfPicture;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Place;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.farm.LedgerPage.Cell;
import eggwright.desk.farm.LedgerPage.Link;
import eggwright.desk.farm.LedgerPage.Sheet;
import eggwright.desk.farm.LedgerPage.Tasks;
import eggwright.desk.ledger.EntryWords;
import eggwright.desk.live.LiveBook;
import eggwright.desk.live.WorkedOut;
import eggwright.desk.part.RateShown;
import eggwright.desk.picture.AccountBar;
import eggwright.desk.picture.Numbers;
import eggwright.desk.words.Words;
import eggwright.forecast.Forecast;
import eggwright.forecast.Forecaster;
import eggwright.forecast.SetForecast;
import eggwright.rates.Dimension;
import eggwright.rates.RateReport;
import eggwright.stats.interval.Intervals;
import eggwright.today.DaySheet;
import eggwright.today.schedule.FarmProfiles;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Today, sets, one set, egg room, pens, settings. */
public final class FarmPages implements Pages {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private final LiveBook book;
    private final WorkedOut<Forecast> forecast;
    private final WorkedOut<RateReport> pens;

    public FarmPages(LiveBook book) {
        this.book = book;
        this.forecast = new WorkedOut<>(
                book,
                now -> Forecaster.of(
                        now.picture(), FarmProfiles.of(now.picture().farm())::of));
        this.pens = new WorkedOut<>(book, now -> RateReport.of(now.picture(), Dimension.PEN));
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/", this::today);
        routes.read("/sets", this::sets);
        routes.read("/sets/{set}", this::set);
        routes.read("/egg-room", this::eggRoom);
        routes.read("/pens", this::pens);
        routes.read("/settings", this::settings);
    }

    private static Words words(Visit visit) {
        return Words.beside(FarmPages.class, visit.language());
    }

    private static Answer page(LedgerPage page) {
        return Answer.page("farm/page.jte", page);
    }

    private static String path(SetPicture set) {
        return "/sets/" + encoded(set.name().text());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private static long day(SetPicture set, LocalDate today) {
        return ChronoUnit.DAYS.between(set.setOn(), today);
    }

    private List<SetPicture> running() {
        return book.picture().sets().values().stream()
                .filter(SetPicture::isRunning)
                .sorted(Comparator.comparing(SetPicture::setOn))
                .toList();
    }

    private Answer today(Visit visit) {
        var words = words(visit);
        var now = book.time();
        var day = DaySheet.of(book.picture(), now);
        var rows = new ArrayList<List<Cell>>();
        for (var set : running()) {
            rows.add(List.of(
                    new Cell(set.name().text(), path(set)),
                    Cell.of(day(set, now.toLocalDate())),
                    Cell.of(in(set)),
                    Cell.of(range(set, words))));
        }
        var doubts = book.picture().discrepancies().size();
        var sheets = new ArrayList<Sheet>();
        sheets.add(new Sheet(
                words.say("today.sets"),
                rows.isEmpty() ? words.say("today.none") : "",
                List.of(words.say("head.set"), words.say("head.day"), words.say("head.in"), words.say("head.chicks")),
                rows));
        sheets.add(shelves(words, now.toLocalDate()));
        var links = new ArrayList<Link>();
        links.add(new Link("/notes", words.say("today.note")));
        if (doubts > 0) {
            links.add(new Link("/book", words.say("today.doubts", doubts)));
        }
        return page(new LedgerPage(
                Place.TODAY,
                words.say("today.title", DAY.format(now)),
                words.say("today.lead"),
                links,
                tasks(day, words, visit.language()),
                List.of(),
                sheets));
    }

    private static List<Tasks> tasks(DaySheet day, Words words, Locale language) {
        var sentences = new TaskWords(language);
        var groups = new ArrayList<Tasks>();
        var now = new ArrayList<>(day.overdue());
        now.addAll(day.due());
        if (now.isEmpty()) {
            groups.add(new Tasks(words.say("today.nothing"), List.of()));
        } else {
            groups.add(new Tasks(words.say("today.now"), lines(now, sentences)));
        }
        day.comingByDay().forEach((on, coming) -> {
            var work = coming.stream()
                    .filter(t -> t.kind() != TaskKind.DAILY_ROUND)
                    .toList();
            if (!work.isEmpty()) {
                groups.add(new Tasks(DAY.format(on), lines(work, sentences)));
            }
        });
        return groups;
    }

    private static List<LedgerPage.Line> lines(List<Task> tasks, TaskWords sentences) {
        return tasks.stream()
                .map(t -> new LedgerPage.Line(
                        TaskWords.path(t.target()), sentences.sentence(t), sentences.mark(t.urgency())))
                .toList();
    }

    private static int in(SetPicture set) {
        return set.account().fates().stream()
                .filter(f -> f.fate() == Fate.IN_SETTER || f.fate() == Fate.IN_HATCHER)
                .filter(f -> f.of().ids().getFirst().load().set().equals(set.name()))
                .mapToInt(f -> f.eggs())
                .sum();
    }

    private String range(SetPicture set, Words words) {
        return forecast.get().sets().stream()
                .filter(f -> f.set().equals(set.name()))
                .findFirst()
                .map(f -> range(f, words))
                .orElse("");
    }

    private static String range(SetForecast forecast, Words words) {
        var most = forecast.chicks().interval(0.8);
        return words.say("range", forecast.chicks().quantile(0.5), most.low(), most.high());
    }

    private Answer sets(Visit visit) {
        var words = words(visit);
        var rows = new ArrayList<List<Cell>>();
        var all = book.picture().sets().values().stream()
                .sorted(Comparator.comparing(SetPicture::setOn).reversed())
                .toList();
        for (var set : all) {
            var total = RateReport.total(book.picture(), List.of(set.account()));
            rows.add(List.of(
                    new Cell(set.name().text(), path(set)),
                    Cell.of(DAY.format(set.setOn())),
                    Cell.of(set.eggsSet()),
                    Cell.of(rate(total.fertility(), visit.language(), words)),
                    Cell.of(set.isRunning() ? range(set, words) : rate(total.hatchOfSet(), visit.language(), words))));
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
        return page(new LedgerPage(
                Place.SETS,
                words.say("sets.title"),
                words.say("sets.lead"),
                List.of(new Link("/notes/eggs-set", words.say("sets.new"))),
                List.of(),
                List.of(sheet)));
    }

    private static String rate(Rate rate, Locale language, Words words) {
        if (rate.isEmpty()) {
            return words.say("notYet");
        }
        var interval = Intervals.wilson95(rate);
        return RateShown.of(rate.count(), rate.of(), 100 * interval.low(), 100 * interval.high(), language)
                .share()
                .map(share -> words.say("rate", rate.count(), rate.of(), share))
                .orElse("");
    }

    private Answer set(Visit visit) {
        var words = words(visit);
        Optional<SetPicture> found;
        try {
            found = book.picture().set(new SetName(visit.at("set")));
        } catch (OutOfRange notAName) {
            found = Optional.empty();
        }
        return found.map(set -> page(one(set, words, visit.language())))
                .orElseGet(() -> Answer.notThere(words.say("set.named", visit.at("set"))));
    }

    private LedgerPage one(SetPicture set, Words words, Locale language) {
        var today = book.time().toLocalDate();
        var total = RateReport.total(book.picture(), List.of(set.account()));
        var asked = "?set=" + encoded(set.name().text());
        var loads = new ArrayList<List<Cell>>();
        for (var load : set.loads().values()) {
            var now = load.eggsNow();
            loads.add(List.of(
                    new Cell(
                            load.ref().tray().text(),
                            "/notes/looked" + asked + "&tray="
                                    + encoded(load.ref().tray().text())),
                    Cell.of(String.join(
                            ", ",
                            load.parcels().stream()
                                    .map(FarmPages::pen)
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
                        Cell.of(rate(total.fertility(), language, words))),
                List.of(Cell.of(words.say("hatchOfSet")), Cell.of(rate(total.hatchOfSet(), language, words))),
                List.of(Cell.of(words.say("hatchOfFertile")), Cell.of(rate(total.hatchOfFertile(), language, words))),
                List.of(Cell.of(words.say("chicksOfSet")), Cell.of(rate(total.chicksOfSet(), language, words))),
                List.of(
                        Cell.of(words.say("forecast")),
                        Cell.of(set.isRunning() ? range(set, words) : words.say("over"))));
        return new LedgerPage(
                Place.SETS,
                words.say("set.title", set.name().text()),
                words.say("set.lead", DAY.format(set.setOn()), day(set, today), set.eggsSet()),
                List.of(
                        new Link("/notes/looked" + asked, words.say("set.candle")),
                        new Link(
                                "/notes/eggs-moved?from_set="
                                        + encoded(set.name().text()),
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
                        Cell.of(STAMP.format(e.at().atZoneSameInstant(zone))),
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

    private Sheet shelves(Words words, LocalDate today) {
        var rows = new ArrayList<List<Cell>>();
        for (var shelf : book.picture().eggRoom().values()) {
            if (shelf.eggs() > 0) {
                rows.add(List.of(
                        Cell.of(name(shelf, words)),
                        Cell.of(shelf.key().species().word()),
                        Cell.of(shelf.eggs()),
                        Cell.of(age(shelf, today, words))));
            }
        }
        return new Sheet(
                words.say("eggRoom.title"),
                rows.isEmpty() ? words.say("eggRoom.none") : "",
                List.of(
                        words.say("head.pen"),
                        words.say("head.species"),
                        words.say("head.eggs"),
                        words.say("head.oldest")),
                rows);
    }

    private static String name(ShelfPicture shelf, Words words) {
        var pen = shelf.key().pen();
        return pen == null ? words.say("noPen") : pen.text();
    }

    private static String age(ShelfPicture shelf, LocalDate today, Words words) {
        var oldest = shelf.stored().getFirst().laidFrom();
        if (oldest == null) {
            return words.say("ageUnknown");
        }
        long days = ChronoUnit.DAYS.between(oldest, today);
        double advised =
                SpeciesProfile.of(shelf.key().species()).storageAdvisedDays().value();
        return words.say(days > advised ? "ageOver" : "age", days, Math.round(advised));
    }

    private Answer eggRoom(Visit visit) {
        var words = words(visit);
        var rejects = new ArrayList<List<Cell>>();
        for (var shelf : book.picture().eggRoom().values()) {
            int rejected = shelf.gatheredRejected();
            int all = rejected + shelf.gatheredKept();
            if (all > 0) {
                rejects.add(List.of(
                        Cell.of(name(shelf, words)),
                        Cell.of(all),
                        Cell.of(rate(new Rate(rejected, all), visit.language(), words))));
            }
        }
        return page(new LedgerPage(
                Place.EGG_ROOM,
                words.say("eggRoom.title"),
                words.say("eggRoom.lead"),
                List.of(
                        new Link("/notes/eggs-gathered", words.say("eggRoom.gather")),
                        new Link("/notes/eggs-set", words.say("sets.new")),
                        new Link("/notes/eggs-counted", words.say("eggRoom.count"))),
                List.of(),
                List.of(
                        shelves(words, book.time().toLocalDate()),
                        new Sheet(
                                words.say("eggRoom.rejects"),
                                "",
                                List.of(words.say("head.pen"), words.say("head.gathered"), words.say("head.rejected")),
                                rejects))));
    }

    private Answer pens(Visit visit) {
        var words = words(visit);
        var rows = new ArrayList<List<Cell>>();
        for (var pen : book.picture().pens().values()) {
            var species = pen.species();
            rows.add(List.of(
                    Cell.of(pen.pen()),
                    Cell.of(species == null ? "" : species.word()),
                    Cell.of(words.say("birds", pen.cocks(), pen.hens())),
                    Cell.of(pen.closedOn() == null ? "" : words.say("closed", DAY.format(pen.closedOn())))));
        }
        var rates = new ArrayList<List<Cell>>();
        for (var group : pens.get().groups()) {
            rates.add(List.of(
                    Cell.of(group.key()),
                    Cell.of(rate(group.fertility(), visit.language(), words)),
                    Cell.of(words.say("basis." + group.basis().word())),
                    Cell.of(rate(group.hatchOfFertile(), visit.language(), words))));
        }
        return page(new LedgerPage(
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
                                rates))));
    }

    private Answer settings(Visit visit) {
        var words = words(visit);
        var habits = book.picture().farm().habits();
        var weekday = habits.setWeekday();
        var days = habits.candlingDays();
        var rows = List.of(
                List.of(Cell.of(words.say("habit.name")), Cell.of(habits.farmName())),
                List.of(Cell.of(words.say("habit.zone")), Cell.of(habits.zone().getId())),
                List.of(
                        Cell.of(words.say("habit.set")),
                        Cell.of((weekday == null
                                        ? words.say("anyDay")
                                        : weekday.getDisplayName(java.time.format.TextStyle.FULL, visit.language()))
                                + " " + habits.setHour())),
                List.of(Cell.of(words.say("habit.candle")), Cell.of(days == null ? words.say("custom") : days)),
                List.of(Cell.of(words.say("habit.rounds")), Cell.of(habits.rounds())));
        var own = new ArrayList<List<Cell>>();
        for (var species : Species.values()) {
            var fields = book.picture().farm().overrides().get(species);
            if (fields != null) {
                fields.forEach((field, value) -> own.add(List.of(
                        Cell.of(species.word()),
                        Cell.of(field.replace('_', ' ')),
                        Cell.of(value.value()),
                        Cell.of(value.since()))));
            }
        }
        return page(new LedgerPage(
                Place.SETTINGS,
                words.say("settings.title"),
                words.say("settings.lead"),
                List.of(
                        new Link("/notes/farm-habits", words.say("settings.habits")),
                        new Link("/notes/species-override", words.say("settings.own"))),
                List.of(),
                List.of(
                        new Sheet(
                                words.say("settings.habitsTitle"),
                                "",
                                List.of(words.say("head.habit"), words.say("head.value")),
                                rows),
                        new Sheet(
                                words.say("settings.ownTitle"),
                                own.isEmpty() ? words.say("settings.ownNone") : "",
                                List.of(
                                        words.say("head.species"),
                                        words.say("head.figure"),
                                        words.say("head.value"),
                                        words.say("head.since")),
                                own))));
    }
}
