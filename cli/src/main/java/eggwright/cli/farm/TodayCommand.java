package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.Picture;
import eggwright.cli.voice.Status;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
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
        var head = data.head();
        var kept = TodayAside.find(data, head);
        var said = kept.flatMap(k -> command.asksForJson() ? k.json(now) : k.text(now));
        if (said.isPresent()) {
            command.out().print(said.get());
            return Status.DONE;
        }
        try (var store = data.read()) {
            var picture = kept.flatMap(k -> k.picture(now))
                    .orElseGet(() -> Ledger.of(store.all()).picture());
            int status = say(command, picture, now);
            command.out().flush();
            // An entry that came while the book was read belongs to a later head.
            var read = picture.entryCount() == head.count() ? head : store.head(picture.entryCount());
            TodayAside.keep(data, read, picture, now);
            return status;
        }
    }

    private static int say(FarmCommand command, Picture picture, Instant now) {
        var sheet = TodayText.sheet(picture, now);
        if (command.asksForJson()) {
            command.out().print(TodayReading.json(picture, sheet));
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
