package eggwright.cli.farm;

import eggwright.desk.today.EggLines;
import eggwright.desk.today.GapLines;
import eggwright.desk.today.TaskWords;
import eggwright.desk.words.Days;
import eggwright.today.DaySheet;
import eggwright.today.eggroom.EggRoomSheet;
import eggwright.today.task.Bundle;
import eggwright.today.task.Task;
import eggwright.today.task.Work;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/** The day sheet for people: one line for what is done in one go, its shelves below. */
final class TodayLines {
    private final PrintWriter out;
    private final TaskWords words = new TaskWords(Locale.ENGLISH);
    private final Days days = Days.in(Locale.ENGLISH);

    private TodayLines(PrintWriter out) {
        this.out = out;
    }

    static void write(PrintWriter out, DaySheet sheet, EggRoomSheet room) {
        var lines = new TodayLines(out);
        out.println(lines.days.fullDay(sheet.now()));
        if (sheet.overdue().isEmpty() && sheet.due().isEmpty()) {
            out.println("  Nothing to do right now.");
        }
        lines.bundles(sheet.overdue());
        lines.bundles(sheet.due());
        sheet.comingByDay().forEach((day, coming) -> {
            out.println(lines.days.fullDay(day));
            lines.bundles(coming);
        });
        lines.eggs(room);
        lines.gaps(sheet);
    }

    private void bundles(List<Task> tasks) {
        for (var bundle : Bundle.of(tasks)) {
            var mark = words.mark(bundle.urgency());
            out.println("  " + words.sentence(bundle) + (mark.isEmpty() ? "" : " (" + mark + ")"));
            bundle.tasks().forEach(this::below);
        }
    }

    private void below(Task task) {
        switch (task.work()) {
            case Work.OfTrays it -> out.println("    " + words.shelf(task));
            case Work.OfRound it -> out.println("    " + words.place(task) + ": " + words.checks(it.checks()));
            case Work.OfSet it -> {}
            case Work.OfEggs it -> {}
            case Work.OfMachine it -> {}
            case Work.OfOrders it -> {}
        }
    }

    private void eggs(EggRoomSheet room) {
        var ages = new EggLines(Locale.ENGLISH).ages(room.setFirst());
        if (!ages.isEmpty()) {
            out.println("In the egg room, which to set first");
            ages.forEach(a ->
                    out.println("  " + a.age() + ": " + a.eggs() + (a.eggs().equals("1") ? " egg (" : " eggs (")
                            + a.pens() + ")" + (a.mark().isEmpty() ? "" : ", " + a.mark())));
        }
    }

    private void gaps(DaySheet sheet) {
        var gaps = new GapLines(Locale.ENGLISH).of(sheet);
        if (!gaps.isEmpty()) {
            out.println("Not noted");
            gaps.forEach(g -> out.println("  " + g.text()));
        }
    }
}
