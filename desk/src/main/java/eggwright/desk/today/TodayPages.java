package eggwright.desk.today;

import eggwright.book.picture.Fate;
import eggwright.book.picture.SetPicture;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.May;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.today.DaySheet;
import eggwright.today.eggroom.EggRoomSheet;
import eggwright.today.task.Bundle;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Urgency;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** What to do, what is in the machines, what waits in the egg room. */
public final class TodayPages implements Pages {
    private final LiveBook book;
    private final BiFunction<SetPicture, Visit, String> chicks;

    /**
     * @param chicks chicks to come of a set in the machines, in words
     */
    public TodayPages(LiveBook book, BiFunction<SetPicture, Visit, String> chicks) {
        this.book = book;
        this.chicks = chicks;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/", May.READ, this::today);
    }

    private Answer today(Visit visit) {
        var words = Words.beside(TodayPages.class, visit.language());
        var now = book.time();
        var sheet = DaySheet.of(book.picture(), now);
        var lines = new DayLines(new TaskWords(visit.language()));
        var doubts = book.picture().discrepancies().size();
        return Answer.page(
                "today/page.jte",
                new TodayPage(
                        words.say("today.title", Days.in(words.language()).day(now)),
                        lead(sheet, words),
                        doubts == 0 ? "" : words.say("today.doubts", doubts),
                        parts(sheet, lines, words),
                        coming(sheet, lines, new TaskWords(visit.language())),
                        new GapLines(visit.language()).of(sheet),
                        new EggLines(words).of(EggRoomSheet.of(book.picture(), now)),
                        running(visit, now.toLocalDate(), words)));
    }

    private static String lead(DaySheet sheet, Words words) {
        int late = Bundle.of(sheet.overdue()).size();
        int now = Bundle.of(of(sheet, Urgency.NOW)).size();
        int later = Bundle.of(of(sheet, Urgency.LATER_TODAY)).size();
        var parts = new ArrayList<String>();
        if (late > 0) {
            parts.add(words.say("lead.late", late));
        }
        parts.add(now == 0 ? words.say("lead.nothing") : words.say("lead.now", now));
        if (later > 0) {
            parts.add(words.say("lead.later", later));
        }
        return String.join(" ", parts);
    }

    private static List<Task> of(DaySheet sheet, Urgency urgency) {
        return sheet.due().stream().filter(t -> t.urgency() == urgency).toList();
    }

    private static List<TodayPage.Part> parts(DaySheet sheet, DayLines lines, Words words) {
        var now = new ArrayList<>(of(sheet, Urgency.NOW));
        now.addAll(of(sheet, Urgency.STILL_POSSIBLE));
        var parts = new ArrayList<TodayPage.Part>();
        add(parts, words.say("part.late"), sheet.overdue(), lines);
        add(parts, words.say("part.now"), now, lines);
        add(parts, words.say("part.later"), of(sheet, Urgency.LATER_TODAY), lines);
        return parts;
    }

    private static void add(List<TodayPage.Part> parts, String title, List<Task> tasks, DayLines lines) {
        if (!tasks.isEmpty()) {
            var bundles = Bundle.of(tasks);
            parts.add(new TodayPage.Part(title, lines.of(bundles), lines.cautions(bundles)));
        }
    }

    private static List<TodayPage.Day> coming(DaySheet sheet, DayLines lines, TaskWords sentences) {
        var days = new ArrayList<TodayPage.Day>();
        sheet.comingByDay().forEach((on, tasks) -> {
            var bundles = Bundle.of(
                    tasks.stream().filter(t -> t.kind() != TaskKind.DAILY_ROUND).toList());
            if (!bundles.isEmpty()) {
                days.add(new TodayPage.Day(
                        Days.in(sentences.words().language()).day(on),
                        bundles.stream().map(sentences::brief).distinct().collect(Collectors.joining("; ")),
                        lines.of(bundles),
                        lines.cautions(bundles)));
            }
        });
        return days;
    }

    private List<TodayPage.Running> running(Visit visit, LocalDate today, Words words) {
        return book.picture().sets().values().stream()
                .filter(SetPicture::isRunning)
                .sorted(Comparator.comparing(SetPicture::setOn))
                .map(set -> new TodayPage.Running(
                        "/sets/" + Paths.encoded(set.name().text()),
                        set.name().text(),
                        Long.toString(ChronoUnit.DAYS.between(set.setOn(), today)),
                        words.say("count", in(set)),
                        chicks.apply(set, visit)))
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
