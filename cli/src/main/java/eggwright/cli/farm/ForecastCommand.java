package eggwright.cli.farm;

import eggwright.book.entry.Origin;
import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.cli.voice.Status;
import eggwright.forecast.Forecaster;
import eggwright.forecast.record.Forecasted.Moment;
import eggwright.forecast.record.TrackRecord;
import eggwright.stats.predictive.WholeCounts;
import eggwright.units.Rate;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/** Chicks to come. */
final class ForecastCommand {
    private ForecastCommand() {}

    static CommandSpec spec() {
        return FarmCommand.of(
                "forecast",
                "Saleable chicks to come of the eggs in the machines, as ranges.",
                "eggwright forecast --as-of 2027-05-01T12:00-05:00",
                ForecastCommand::run,
                List.of(
                        FarmCommand.option("as-of", "INSTANT", "what was known then, such as 2027-05-01T12:00-05:00"),
                        FarmCommand.option("at-least", "CHICKS", "also the chance of at least so many"),
                        FarmCommand.flag("track-record", "how often past ranges held")));
    }

    private static int run(FarmCommand command) {
        var ledger = FarmCommands.ledger(command);
        var asOf = command.given("as-of");
        if (asOf.isPresent()) {
            try {
                ledger = ledger.asOf(OffsetDateTime.parse(asOf.get()).toInstant());
            } catch (DateTimeException notAnInstant) {
                throw FarmCommands.refused("--as-of \"" + asOf.get()
                        + "\" is not an instant. Nothing was done. Write it as 2027-05-01T12:00-05:00.");
            }
        }
        var profiles = FarmCommands.profiles(ledger.picture());
        if (command.has("track-record")) {
            var record = TrackRecord.of(
                    ledger, profiles, () -> Thread.currentThread().isInterrupted());
            Say.answer(command, record(record));
            return Status.DONE;
        }
        int atLeast = command.given("at-least").map(ForecastCommand::whole).orElse(-1);
        var forecast = Forecaster.of(ledger.picture(), profiles);
        var sets = new ArrayList<Value>();
        for (var set : forecast.sets()) {
            sets.add(new Value.Group(counts(
                    Answer.of()
                            .with("set", set.set().text())
                            .with("species", set.species().word())
                            .with("set_on", set.setOn().toString())
                            .with("hatch_on", set.hatchOn().toString())
                            .with("eggs_in", set.eggsIn())
                            .with("known", set.known().word()),
                    set.chicks(),
                    atLeast)));
        }
        var weeks = new ArrayList<Value>();
        for (var week : forecast.weeks()) {
            weeks.add(new Value.Group(counts(
                    Answer.of()
                            .with("week_of", week.monday().toString())
                            .with("species", week.species().word()),
                    week.chicks(),
                    atLeast)));
        }
        Say.answer(
                command,
                Answer.of()
                        .with("sets", new Value.Many(sets))
                        .with("weeks", new Value.Many(weeks))
                        .with("total", counts(Answer.of(), forecast.total(), atLeast)));
        return Status.DONE;
    }

    private static int whole(String typed) {
        if (!typed.matches("\\d{1,7}")) {
            throw FarmCommands.refused("--at-least \"" + typed + "\" is not a whole number. Nothing was done.");
        }
        return Integer.parseInt(typed);
    }

    private static Answer counts(Answer answer, WholeCounts chicks, int atLeast) {
        var most = chicks.interval(0.8);
        var nearly = chicks.interval(0.95);
        var full = answer.with("mean", chicks.mean())
                .with("median", chicks.quantile(0.5))
                .with("low_80", most.low())
                .with("high_80", most.high())
                .with("low_95", nearly.low())
                .with("high_95", nearly.high());
        return atLeast < 0 ? full : full.with("at_least_probability", chicks.atLeast(atLeast));
    }

    private static Answer record(TrackRecord record) {
        var answer = Answer.of();
        for (var moment : Moment.values()) {
            for (var origin : Origin.values()) {
                if (!record.of(moment, origin).isEmpty()) {
                    answer = answer.with(
                            moment.word() + (origin == Origin.IMPORTED ? "_imported" : ""),
                            Answer.of()
                                    .with("held_80", held(record.held(moment, origin, 0.8)))
                                    .with("held_95", held(record.held(moment, origin, 0.95)))
                                    .with("held_80_randomised_ends", held(record.heldRandomised(moment, origin, 0.8)))
                                    .with(
                                            "held_95_randomised_ends",
                                            held(record.heldRandomised(moment, origin, 0.95))));
                }
            }
        }
        return answer;
    }

    private static Answer held(Rate rate) {
        return Answer.of().with("held", rate.count()).with("of", rate.of());
    }
}
