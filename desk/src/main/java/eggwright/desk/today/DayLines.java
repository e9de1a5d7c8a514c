package eggwright.desk.today;

import eggwright.desk.part.CautionShown;
import eggwright.desk.today.TodayPage.Detail;
import eggwright.desk.today.TodayPage.Line;
import eggwright.desk.today.TodayPage.Link;
import eggwright.desk.words.Words;
import eggwright.today.task.Bundle;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Urgency;
import eggwright.today.task.Work;
import eggwright.trade.caution.Cautions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;

/** Work as lines of the page: done in one go, one line; shelf by shelf and tray by tray behind one touch. */
final class DayLines {
    private final TaskWords sentences;
    private final Words words;
    private final ReasonWords reasons;
    private final EggLines eggs;

    DayLines(TaskWords sentences) {
        this.sentences = sentences;
        this.words = sentences.words();
        this.reasons = new ReasonWords(words);
        this.eggs = new EggLines(words);
    }

    List<Line> of(List<Bundle> bundles) {
        var lines = new ArrayList<Line>();
        var said = new HashSet<String>();
        for (var bundle : bundles) {
            var aside = aside(bundle);
            // What is looked at on a round is said once, not for each round of the day.
            lines.add(line(bundle, said.add(aside) ? aside : ""));
        }
        return lines;
    }

    /** The cautions of this work, each once. */
    List<CautionShown> cautions(List<Bundle> bundles) {
        return bundles.stream()
                .flatMap(b -> b.first().cautions().stream())
                .distinct()
                .map(place -> CautionShown.of(Cautions.at(place), words.language()))
                .toList();
    }

    private Line line(Bundle bundle, String aside) {
        var details = new ArrayList<Detail>();
        bundle.tasks().forEach(task -> details.addAll(details(bundle, task)));
        details.add(new Detail(reasons.of(bundle), List.of()));
        var still = bundle.urgency() == Urgency.STILL_POSSIBLE;
        return new Line(
                Paths.of(bundle.target()),
                sentences.sentence(bundle),
                still ? sentences.mark(Urgency.STILL_POSSIBLE) : "",
                aside,
                words.say(details.size() > 1 ? unfold(bundle) : "unfold.why"),
                details);
    }

    private String aside(Bundle bundle) {
        return bundle.tasks().stream()
                .filter(t -> t.work() instanceof Work.OfRound)
                .map(t -> (Work.OfRound) t.work())
                .max(Comparator.comparingInt(r -> r.checks().size()))
                .map(r -> words.say("round.aside", sentences.checks(r.checks())))
                .orElse("");
    }

    private static String unfold(Bundle bundle) {
        return switch (bundle.first().work()) {
            case Work.OfTrays it -> "unfold.trays";
            case Work.OfSet it -> "unfold.why";
            case Work.OfEggs it -> "unfold.eggs";
            case Work.OfRound it -> "unfold.machines";
            case Work.OfMachine it -> "unfold.machines";
            case Work.OfOrders it -> "unfold.orders";
        };
    }

    private List<Detail> details(Bundle bundle, Task task) {
        return switch (task.work()) {
            case Work.OfTrays it -> List.of(trays(task));
            case Work.OfSet it -> List.of();
            case Work.OfEggs it ->
                eggs.ages(it.lots()).stream()
                        .map(age -> new Detail(words.say("work.sentence", age.age(), age.pens()), List.of()))
                        .toList();
            case Work.OfRound it ->
                List.of(new Detail("", List.of(new Link(Paths.of(task.target()), round(task, it)))));
            case Work.OfMachine it ->
                bundle.tasks().size() == 1
                        ? List.of()
                        : List.of(new Detail("", List.of(new Link(Paths.of(task.target()), sentences.place(task)))));
            case Work.OfOrders it ->
                it.promises().stream()
                        .map(p -> new Detail(
                                "",
                                List.of(new Link(
                                        Paths.of(Target.Form.of("chicks-delivered", p.order())),
                                        words.say(
                                                "work.order",
                                                p.order().text(),
                                                p.chicks(),
                                                words.species(p.species()))))))
                        .toList();
        };
    }

    private String round(Task task, Work.OfRound it) {
        return words.say("work.sentence", sentences.place(task), sentences.checks(it.checks()));
    }

    /** Each tray leads to its own form where it has one. */
    private Detail trays(Task task) {
        var links = new ArrayList<Link>();
        for (var tray : task.trays()) {
            var path = Bundle.of(task, tray.tray()).map(Paths::of).orElse("");
            links.add(new Link(task.kind() == TaskKind.STOP_TURNING ? "" : path, sentences.tray(tray)));
        }
        return new Detail(sentences.place(task), links);
    }
}
