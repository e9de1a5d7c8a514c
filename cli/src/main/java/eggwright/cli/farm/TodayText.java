package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.desk.farm.TaskWords;
import eggwright.today.DaySheet;
import eggwright.today.task.Task;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** The day sheet as it is read in a terminal. */
final class TodayText {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

    private final StringBuilder text = new StringBuilder();
    private final TaskWords words = new TaskWords(Locale.ENGLISH);

    private TodayText() {}

    /** The sheet of a picture; a farm that has noted no zone lives by this machine's. */
    static DaySheet sheet(Picture picture, Instant now) {
        return DaySheet.of(
                picture, now.atZone(hasZone(picture) ? picture.farm().habits().zone() : ZoneId.systemDefault()));
    }

    /** Whether the farm has said by which clock it lives. */
    static boolean hasZone(Picture picture) {
        var noted = picture.farm().habits().zone();
        return !noted.equals(ZoneId.of("UTC")) && !noted.equals(ZoneOffset.UTC);
    }

    static String of(DaySheet sheet) {
        var text = new TodayText();
        text.line(DAY.format(sheet.now()));
        if (sheet.overdue().isEmpty() && sheet.due().isEmpty()) {
            text.line("  Nothing to do right now.");
        }
        text.lines(sheet.overdue());
        text.lines(sheet.due());
        sheet.comingByDay().forEach((day, coming) -> {
            text.line(DAY.format(day));
            text.lines(coming);
        });
        return text.text.toString();
    }

    private void lines(List<Task> tasks) {
        for (var task : tasks) {
            var mark = words.mark(task.urgency());
            line("  " + words.sentence(task) + (mark.isEmpty() ? "" : " (" + mark + ")"));
        }
    }

    private void line(String line) {
        text.append(line).append(System.lineSeparator());
    }
}
