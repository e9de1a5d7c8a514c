package eggwright.desk.pattern;

import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Choice.Option;
import eggwright.desk.form.Form;
import eggwright.desk.form.Typed;
import eggwright.desk.part.CautionShown;
import eggwright.desk.part.NoticeShown;
import eggwright.desk.part.RateShown;
import eggwright.desk.picture.Samples;
import eggwright.desk.who.May;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The routes of the pattern page. */
public final class Patterns implements Pages {
    private static final String TEMPLATE = "pattern/page.jte";

    @Override
    public void addTo(Routes routes) {
        routes.read("/pattern", May.READ, visit -> Answer.page(TEMPLATE, page(form())));
        routes.read("/pattern/refused", May.READ, visit -> Answer.refused(TEMPLATE, page(refused())));
        routes.write("/pattern", May.READ, Patterns::keep);
    }

    private static Answer keep(Visit visit) {
        var form = form().filledFrom(visit.typed());
        return Form.isToBeShownAgain(visit.typed())
                ? Answer.page(TEMPLATE, page(form))
                : Answer.refused(TEMPLATE, page(form.toMend(mends())));
    }

    private static PatternPage page(Form form) {
        return new PatternPage(
                List.of(
                        NoticeShown.kept("Kept: 54 eggs of pen 4 went into section 2.")
                                .then("/book", "Mend it"),
                        NoticeShown.look("Tray 7 was counted twice on day 8, and the counts differ."),
                        NoticeShown.refused("The book’s disk is full. Nothing was kept; what you typed stands below.")),
                new CautionShown(
                        "A rotten egg can burst",
                        "Carry it out level, away from the face, and close it in a bag before the next tray.",
                        "How carcasses and eggs are disposed of is for your local rules; ask your vet what the smell means."),
                RateShown.of(51, 54, 84.9, 98.1, Locale.ENGLISH),
                Samples.all(),
                form);
    }

    private static Form form() {
        var pens = List.of(new Option("4", "Pen 4, ringnecks"), new Option("5", "Pen 5, bobwhite"));
        return Form.of(
                "/pattern",
                "0192f0c1-0000-7000-8000-000000000001",
                "Keep this gathering",
                Field.Line.moment("at", "Gathered").withValue("2027-04-05T17:30"),
                Field.Choice.list("pen", "Pen", pens),
                Field.Line.whole("kept", "Eggs kept", "eggs").withHint("Clean, whole, and of a good shape."),
                Field.Line.measure("room", "Egg room", "With its unit, as 55F or 12.8C")
                        .optional(),
                Field.Choice.radio(
                                "weather",
                                "Weather",
                                List.of(
                                        new Option("dry", "Dry"),
                                        new Option("wet", "Wet"),
                                        new Option("frost", "Frost")))
                        .withValue("dry"),
                Field.Rows.of(
                                "tray",
                                "Onto trays",
                                "Tray",
                                "More trays",
                                2,
                                List.of(
                                        Field.Line.text("name", "Number on it"),
                                        Field.Line.whole("eggs", "Eggs", "eggs"),
                                        Field.Choice.list(
                                                "section",
                                                "Section",
                                                List.of(new Option("1", "1, upper"), new Option("2", "2, lower")))))
                        .withHint("Leave a row empty where there is no tray."),
                Field.Line.remark("remark", "Remark"));
    }

    private static Form refused() {
        return form().filledFrom(Typed.of(Map.of(
                        "kept", "fifty-four",
                        "room", "55",
                        "tray.1.name", "7",
                        "tray.1.eggs", "62",
                        "remark", "wind & <rain>")))
                .toMend(mends());
    }

    private static List<Form.ToMend> mends() {
        return List.of(
                new Form.ToMend("", "The desk was asked to keep more eggs than pen 4 can lay in a day."),
                new Form.ToMend("pen", "No pen was chosen. Say which pen the eggs are from."),
                new Form.ToMend("kept", "“fifty-four” is not a whole number. Write it in digits, as 54."),
                new Form.ToMend("room", "“55” has no unit. Write 55F or 12.8C."),
                new Form.ToMend("tray.1.eggs", "Tray 7 holds 54 eggs, and 62 were written."));
    }
}
