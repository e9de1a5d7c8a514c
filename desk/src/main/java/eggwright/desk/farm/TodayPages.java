package eggwright.desk.farm;

import eggwright.book.picture.Fate;
import eggwright.book.picture.SetPicture;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Place;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.farm.LedgerPage.Cell;
import eggwright.desk.farm.LedgerPage.Link;
import eggwright.desk.farm.LedgerPage.Sheet;
import eggwright.desk.farm.LedgerPage.Tasks;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.today.DaySheet;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What to do, what is in the machines, what waits in the egg room. */
final class TodayPages implements Pages {
    private final LiveBook book;
    private final Chicks chicks;

    TodayPages(LiveBook book, Chicks chicks) {
        this.book = book;
        this.chicks = chicks;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/", May.READ, this::today);
    }

    private Answer today(Visit visit) {
        var words = Shown.words(visit);
        var now = book.time();
        var day = DaySheet.of(book.picture(), now);
        var rows = new ArrayList<List<Cell>>();
        for (var set : running()) {
            rows.add(List.of(
                    new Cell(set.name().text(), Shown.path(set)),
                    Cell.of(Shown.day(set, now.toLocalDate())),
                    Cell.of(in(set)),
                    Cell.of(chicks.range(set, words))));
        }
        var doubts = book.picture().discrepancies().size();
        var sheets = new ArrayList<Sheet>();
        sheets.add(new Sheet(
                words.say("today.sets"),
                rows.isEmpty() ? words.say("today.none") : "",
                List.of(words.say("head.set"), words.say("head.day"), words.say("head.in"), words.say("head.chicks")),
                rows));
        sheets.add(ShelfSheet.of(book.picture(), words, now.toLocalDate()));
        var links = new ArrayList<Link>();
        links.add(new Link("/notes", words.say("today.note")));
        if (doubts > 0) {
            links.add(new Link("/book", words.say("today.doubts", doubts)));
        }
        return Shown.page(new LedgerPage(
                Place.TODAY,
                words.say("today.title", Shown.DAY.format(now)),
                words.say("today.lead"),
                links,
                tasks(day, words, visit.language()),
                List.of(),
                sheets));
    }

    private List<SetPicture> running() {
        return book.picture().sets().values().stream()
                .filter(SetPicture::isRunning)
                .sorted(Comparator.comparing(SetPicture::setOn))
                .toList();
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
                groups.add(new Tasks(Shown.DAY.format(on), lines(work, sentences)));
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
}
