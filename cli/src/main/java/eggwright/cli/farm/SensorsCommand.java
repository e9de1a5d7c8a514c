package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.cli.answer.Answer;
import eggwright.cli.answer.TableAnswers;
import eggwright.cli.answer.Value;
import eggwright.cli.voice.Refused;
import eggwright.cli.voice.Status;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.SensorName;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.sensor.Sensor;
import eggwright.intake.sensor.Sensors;
import eggwright.sheet.logger.ColumnUse;
import eggwright.sheet.problem.Near;
import eggwright.store.SqliteEntryStore;
import eggwright.units.OutOfRange;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/** The sensors that send by themselves: lists them, adds one with a token that is shown once, revokes one. */
final class SensorsCommand {
    private static final String LIST = "list";
    private static final String ADD = "add";
    private static final String REVOKE = "revoke";

    private SensorsCommand() {}

    static CommandSpec spec() {
        return FarmCommand.of(
                "sensors",
                "Sensors that send their readings by themselves: list them, add one, revoke one. While a desk is open on the book, add and revoke there.",
                "eggwright sensors add --name \"Shelf 2\" --machine Setter --reads air_temperature_f",
                SensorsCommand::run,
                List.of(
                        FarmCommand.option("name", "NAME", "add: what the sensor is called"),
                        FarmCommand.option(
                                "machine", "NAME", "add: where it hangs; \"egg room\" and \"brooder\" will do too"),
                        FarmCommand.option("reads", "WHAT", "add: " + reads()),
                        FarmCommand.option("id", "ID", "revoke: as list tells it")),
                "WHAT");
    }

    private static String reads() {
        return ColumnUse.all().stream()
                .filter(ColumnUse.Value.class::isInstance)
                .map(ColumnUse::word)
                .collect(Collectors.joining(", "));
    }

    private static int run(FarmCommand command) {
        return switch (command.word(0)) {
            case LIST -> list(command);
            case ADD -> add(command);
            case REVOKE -> revoke(command);
            default ->
                throw new Refused("\"" + command.word(0)
                        + "\" is nothing to do with sensors. Nothing was done. Write list, add or revoke.");
        };
    }

    private static Sensors sensors(SqliteEntryStore store) {
        return new Sensors(new StoredSensors(store.sensors()), InstantSource.system(), new SecureRandom());
    }

    private static int list(FarmCommand command) {
        try (var store = command.data().read()) {
            var all = sensors(store).all();
            if (command.asksForJson()) {
                Say.answer(
                        command,
                        Answer.of()
                                .with(
                                        "sensors",
                                        new Value.Many(all.stream()
                                                .<Value>map(s -> new Value.Group(json(s, store)))
                                                .toList())));
            } else if (all.isEmpty()) {
                command.out().println("No sensor sends by itself. Example: eggwright sensors --help");
            } else {
                TableAnswers.table(
                        command.out(),
                        List.of("id", "name", "where", "reads", "last read", "state"),
                        all.stream().map(s -> row(s, store)).toList());
            }
            return Status.DONE;
        }
    }

    private static String last(Sensor sensor, SqliteEntryStore store) {
        return store.readings()
                .extent(sensor.channel())
                .map(e -> e.last().toString())
                .orElse("");
    }

    private static List<String> row(Sensor sensor, SqliteEntryStore store) {
        return List.of(
                sensor.id(),
                sensor.name(),
                FarmPlaces.name(sensor.channel().place()),
                word(sensor.channel()),
                last(sensor, store),
                sensor.mayTell() ? "sends" : "revoked");
    }

    private static String word(Channel channel) {
        return new ColumnUse.Value(channel.quantity(), channel.unit()).word();
    }

    private static Answer json(Sensor sensor, SqliteEntryStore store) {
        var revoked = sensor.revoked();
        return Answer.of()
                .with("id", sensor.id())
                .with("name", sensor.name())
                .with("where", FarmPlaces.name(sensor.channel().place()))
                .with("reads", word(sensor.channel()))
                .with("added_at", sensor.added().toString())
                .with("last_read_at", last(sensor, store))
                .with("revoked_at", revoked == null ? "" : revoked.toString());
    }

    private static int add(FarmCommand command) {
        var name = name(command);
        var use = ColumnUse.ofWord(command.needed("reads"))
                .filter(ColumnUse.Value.class::isInstance)
                .map(ColumnUse.Value.class::cast)
                .orElseThrow(() -> new Refused("--reads: \"" + command.needed("reads")
                        + "\" is nothing that a sensor reads. Nothing was done. Write one of " + reads() + "."));
        var machine = command.needed("machine");
        try (var store = command.data().write()) {
            var farm = FarmPlaces.of(Ledger.of(store.all()).picture());
            var place = farm.named(machine).orElseThrow(() -> noMachine(machine, farm));
            return added(command, sensors(store).add(new Channel(place, name, use.quantity(), use.unit())), place);
        }
    }

    private static SensorName name(FarmCommand command) {
        try {
            return new SensorName(command.needed("name"));
        } catch (OutOfRange notAName) {
            throw new Refused("--name: " + notAName.getMessage() + " Nothing was done.");
        }
    }

    private static Refused noMachine(String machine, FarmPlaces farm) {
        return new Refused("There is no machine \"" + machine + "\". "
                + Near.to(machine, farm.machines())
                        .map(near -> "Is it \"" + near + "\"? ")
                        .orElse("")
                + "Nothing was done. Write a machine of the farm, \"egg room\" or \"brooder\".");
    }

    private static int added(FarmCommand command, Sensors.Added added, ReadingPlace place) {
        return switch (added) {
            case Sensors.Added.In(var sensor, var token) -> {
                command.err().println("The token is shown this once, for only its fingerprint is kept.");
                Say.answer(
                        command,
                        Answer.of()
                                .with("id", sensor.id())
                                .with("name", sensor.name())
                                .with("where", FarmPlaces.name(place))
                                .with("reads", word(sensor.channel()))
                                .with("token", token));
                yield Status.DONE;
            }
            case Sensors.Added.Taken(var by) ->
                throw new Refused("\"" + by.name() + "\" reads the same there already. Nothing was done. Give this one"
                        + " another name, or revoke " + by.id() + " first.");
            case Sensors.Added.TooMany() ->
                throw new Refused("There are " + Sensors.MOST + " sensors already. Nothing was done. Revoke some.");
        };
    }

    private static int revoke(FarmCommand command) {
        var id = command.needed("id");
        try (var store = command.data().write()) {
            var revoked = sensors(store)
                    .revoke(id)
                    .orElseThrow(() -> new Refused(
                            "No sensor of the id \"" + id + "\" sends. Nothing was done. See eggwright sensors list."));
            Say.answer(command, json(withEnd(revoked, store), store));
            return Status.DONE;
        }
    }

    private static Sensor withEnd(Sensor revoked, SqliteEntryStore store) {
        return sensors(store).all().stream()
                .filter(s -> s.id().equals(revoked.id()))
                .findFirst()
                .orElse(revoked);
    }
}
