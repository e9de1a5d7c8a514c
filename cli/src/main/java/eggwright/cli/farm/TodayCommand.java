package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.cli.answer.Answer;
import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.answer.Value;
import eggwright.cli.voice.Status;
import eggwright.desk.farm.TaskWords;
import eggwright.today.DaySheet;
import eggwright.today.task.Task;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;

/** What to do today, in the terminal. */
final class TodayCommand {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

    private TodayCommand() {}

    static CommandSpec spec() {
        return FarmCommand.of(
                "today",
                "What to do today and in the next days, by machine and tray.",
                "eggwright today",
                TodayCommand::run,
                List.of(FarmCommand.option(
                        "at",
                        "INSTANT",
                        "as if it were this hour, by what was known then, such as 2027-05-01T12:00-05:00")));
    }

    private static int run(FarmCommand command) {
        var now = at(command);
        var picture = picture(command, now);
        var noted = picture.farm().habits().zone();
        // A farm that has noted no zone lives by this machine's.
        var zone = noted.equals(ZoneId.of("UTC")) || noted.equals(ZoneOffset.UTC) ? ZoneId.systemDefault() : noted;
        var sheet = DaySheet.of(picture, now.atZone(zone));
        if (command.asksForJson()) {
            new JsonAnswers(command.out())
                    .write(Answer.of()
                            .with("now", sheet.now().toOffsetDateTime().toString())
                            .with("overdue", tasks(sheet.overdue()))
                            .with("due", tasks(sheet.due()))
                            .with("coming", tasks(sheet.coming())));
            return Status.DONE;
        }
        var words = new TaskWords(Locale.ENGLISH);
        command.out().println(DAY.format(sheet.now()));
        if (sheet.overdue().isEmpty() && sheet.due().isEmpty()) {
            command.out().println("  Nothing to do right now.");
        }
        lines(command, sheet.overdue(), words);
        lines(command, sheet.due(), words);
        sheet.comingByDay().forEach((day, coming) -> {
            command.out().println(DAY.format(day));
            lines(command, coming, words);
        });
        return Status.DONE;
    }

    private static Picture picture(FarmCommand command, Instant now) {
        if (command.given("at").isPresent()) {
            return FarmCommands.ledger(command).asOf(now).picture();
        }
        var data = command.data();
        try (var store = data.read()) {
            return TodayAside.picture(data, store, now);
        }
    }

    private static Instant at(FarmCommand command) {
        var typed = command.given("at");
        if (typed.isEmpty()) {
            return Instant.now();
        }
        try {
            return OffsetDateTime.parse(typed.get()).toInstant();
        } catch (DateTimeException notAnInstant) {
            throw FarmCommands.refused("--at \"" + typed.get()
                    + "\" is not an instant. Nothing was done. Write it as 2027-05-01T12:00-05:00.");
        }
    }

    private static void lines(FarmCommand command, List<Task> tasks, TaskWords words) {
        for (var task : tasks) {
            var mark = words.mark(task.urgency());
            command.out().println("  " + words.sentence(task) + (mark.isEmpty() ? "" : " (" + mark + ")"));
        }
    }

    private static Value tasks(List<Task> tasks) {
        return new Value.Many(
                tasks.stream().<Value>map(t -> new Value.Group(answer(t))).toList());
    }

    private static Answer answer(Task task) {
        var answer = Answer.of()
                .with("kind", task.kind().word())
                .with("urgency", task.urgency().word())
                .with("from", task.when().from().toOffsetDateTime().toString())
                .with("to", task.when().to().toOffsetDateTime().toString());
        if (task.where().machine() != null) {
            answer = answer.with("machine", task.where().machine().text());
        }
        if (task.where().section() != null) {
            answer = answer.with("section", task.where().section().text());
        }
        if (task.set().isPresent()) {
            answer = answer.with("set", task.set().get().text());
        }
        var trays = task.trays().stream()
                .<Value>map(t -> {
                    var eggs = t.eggs();
                    var tray = Answer.of().with("tray", t.tray().text());
                    return new Value.Group(eggs == null ? tray : tray.with("eggs", (long) eggs));
                })
                .toList();
        return trays.isEmpty() ? answer : answer.with("trays", new Value.Many(trays));
    }
}
