package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.voice.Status;
import eggwright.today.DaySheet;
import eggwright.today.eggroom.EggRoomSheet;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
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
        var picture = picture(command, now);
        var noted = picture.farm().habits().zone();
        // A farm that has noted no zone lives by this machine's.
        var zone = noted.equals(ZoneId.of("UTC")) || noted.equals(ZoneOffset.UTC) ? ZoneId.systemDefault() : noted;
        var sheet = DaySheet.of(picture, now.atZone(zone));
        var room = EggRoomSheet.of(picture, sheet.now());
        if (command.asksForJson()) {
            new JsonAnswers(command.out()).write(TodayAnswer.of(sheet, room));
        } else {
            TodayLines.write(command.out(), sheet, room);
        }
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
}
