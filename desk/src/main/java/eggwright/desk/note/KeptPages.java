package eggwright.desk.note;

import eggwright.book.entry.Payload;
import eggwright.book.fold.Effective;
import eggwright.book.picture.Discrepancy;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.form.Field;
import eggwright.desk.form.Form;
import eggwright.desk.part.NoticeShown;
import eggwright.desk.who.May;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What was kept: its fields, what does not add up, and where to go on. */
final class KeptPages implements Pages {
    private final Keeping keeping;
    private final Function<Discrepancy, String> doubtWords;

    KeptPages(Keeping keeping, Function<Discrepancy, String> doubtWords) {
        this.keeping = keeping;
        this.doubtWords = doubtWords;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/entries/{id}", May.READ, this::kept);
    }

    private Answer kept(Visit visit) {
        return keeping.entry(visit)
                .map(entry -> page(visit, entry))
                .orElseGet(() -> new Answer.NotThere(Optional.of(visit.at("id"))));
    }

    private Answer page(Visit visit, Effective entry) {
        var words = Keeping.words(visit);
        var picture = keeping.book().picture();
        var doubts = picture.discrepancies().stream()
                .filter(d -> d.entries().contains(entry.id()) || d.entries().contains(entry.shown()))
                .map(doubtWords)
                .toList();
        var notice = switch (visit.asked().text("kept")) {
            case "now" -> NoticeShown.kept(words.say("kept.now"));
            case "before" -> NoticeShown.kept(words.say("kept.before"));
            default -> NoticeShown.kept(words.say("kept.shown", entry.entry().who()));
        };
        return new Answer.Page(
                200,
                "note/kept.jte",
                new KeptPage(
                        Keeping.title(entry.payload(), words),
                        notice,
                        lines(entry, keeping.around(visit)),
                        doubts,
                        "/entries/" + entry.id() + "/mend",
                        NextSteps.after(entry, picture, words)));
    }

    private static List<KeptPage.Line> lines(Effective entry, Around around) {
        var lines = new ArrayList<KeptPage.Line>();
        EntryForms.of(entry.payload().kindWord())
                .ifPresent(form -> filled(form, entry.payload(), around)
                        .fields()
                        .forEach(field -> lines.addAll(KeptLines.of(field))));
        lines.add(new KeptPage.Line(
                around.say("field." + Keeping.HAPPENED),
                entry.at()
                        .atZoneSameInstant(around.now().getZone())
                        .toLocalDateTime()
                        .truncatedTo(ChronoUnit.MINUTES)
                        .toString()
                        .replace('T', ' ')));
        lines.add(new KeptPage.Line(
                around.say("field." + Keeping.WHO), entry.entry().who().text()));
        return lines;
    }

    private static Form filled(EntryForm form, Payload payload, Around around) {
        return Form.of("", "", "", form.fields(around).toArray(Field[]::new))
                .filledFrom(form.written(payload, around.now().getZone()));
    }
}
