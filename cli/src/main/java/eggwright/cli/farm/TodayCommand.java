package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.Picture;
import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.voice.Status;
import eggwright.today.eggroom.EggRoomSheet;
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
            return say(command, FarmCommands.ledger(command).asOf(now).picture(), now);
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
                return say(command, abridged.get(), now);
            }
            var whole = Ledger.of(store.all()).picture();
            // An entry that came while the book was read belongs to a later head.
            TodayAside.of(whole, now)
                    .keep(data, whole.entryCount() == head.count() ? head : store.head(whole.entryCount()));
            return say(command, whole, now);
        }
    }

    private static int say(FarmCommand command, Picture picture, Instant now) {
        var sheet = TodayText.sheet(picture, now);
        if (command.asksForJson()) {
            new JsonAnswers(command.out()).write(TodayAnswer.of(sheet, EggRoomSheet.of(picture, sheet.now())));
        } else {
            command.out().print(TodayText.of(picture, sheet));
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
}
