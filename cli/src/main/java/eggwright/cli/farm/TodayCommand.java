package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.cli.answer.Answer;
import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.answer.Value;
import eggwright.cli.voice.Status;
import eggwright.today.DaySheet;
import eggwright.today.task.Task;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** What to do today, in the terminal. */
final class TodayCommand {
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
        if (command.given("at").isPresent()) {
            return say(
                    command,
                    TodayText.sheet(FarmCommands.ledger(command).asOf(now).picture(), now));
        }
        var data = command.data();
        try (var store = data.read()) {
            var head = store.head();
            var kept = TodayAside.find(data, head);
            var text = command.asksForJson() ? Optional.<String>empty() : kept.flatMap(k -> k.text(now));
            if (text.isPresent()) {
                command.out().print(text.get());
                return Status.DONE;
            }
            var abridged = kept.flatMap(k -> k.picture(now));
            if (kept.isPresent() && abridged.isPresent()) {
                kept.get().withText(abridged.get(), now).keep(data, head);
                return say(command, TodayText.sheet(abridged.get(), now));
            }
            var whole = Ledger.of(store.all()).picture();
            // An entry that came while the book was read belongs to a later head.
            TodayAside.of(whole, now)
                    .keep(data, whole.entryCount() == head.count() ? head : store.head(whole.entryCount()));
            return say(command, TodayText.sheet(whole, now));
        }
    }

    private static int say(FarmCommand command, DaySheet sheet) {
        if (command.asksForJson()) {
            new JsonAnswers(command.out())
                    .write(Answer.of()
                            .with("now", sheet.now().toOffsetDateTime().toString())
                            .with("overdue", tasks(sheet.overdue()))
                            .with("due", tasks(sheet.due()))
                            .with("coming", tasks(sheet.coming())));
        } else {
            command.out().print(TodayText.of(sheet));
        }
        return Status.DONE;
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
