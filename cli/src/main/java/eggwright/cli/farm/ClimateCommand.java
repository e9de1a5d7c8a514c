package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.name.MachineName;
import eggwright.book.picture.Habits;
import eggwright.book.picture.Picture;
import eggwright.cli.voice.Refused;
import eggwright.cli.voice.Status;
import eggwright.climate.air.AirTelling;
import eggwright.climate.air.NotedCare;
import eggwright.climate.air.Surroundings;
import eggwright.climate.care.PlaceSensors;
import eggwright.climate.machine.MachineNights;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.MachineRoom;
import eggwright.climate.reading.ReadingPlace;
import eggwright.egg.air.StandardAtmosphere;
import eggwright.egg.air.Ventilation;
import eggwright.sheet.problem.Near;
import eggwright.units.Altitude;
import eggwright.units.OutOfRange;
import eggwright.units.Pressure;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** One machine: its air, its sets, what they lost, when they hatch, what to turn the dial to, and its sensors. */
final class ClimateCommand {
    /** Bad nights of any set that may still be in the machine. */
    private static final Duration NIGHTS = Duration.ofDays(30);

    private ClimateCommand() {}

    static CommandSpec spec() {
        return FarmCommand.of(
                "climate",
                "One machine: the air in it, what its eggs lost, when they will hatch, and the humidity to run from now on,"
                        + " its bad nights and its sensors.",
                "eggwright climate --machine Setter",
                ClimateCommand::run,
                List.of(
                        FarmCommand.option("machine", "NAME", "which machine"),
                        FarmCommand.option("at", "INSTANT", "as it stood then; now where not given"),
                        FarmCommand.option(
                                "altitude",
                                "HEIGHT",
                                "above the sea, such as 300m; what the farm noted where not given"),
                        FarmCommand.option("pressure", "PRESSURE", "of the barometer at the place, such as 1002hPa")));
    }

    private static int run(FarmCommand command) {
        var at = at(command);
        try (var store = command.data().read()) {
            var ledger = Ledger.of(store.all());
            var picture = command.given("at").isEmpty()
                    ? ledger.picture()
                    : ledger.asOf(at).picture();
            var telling = new AirTelling(store.readings(), new NotedCare(picture));
            var surroundings = surroundings(command, picture.farm().habits());
            var room = new MachineRoom(picture, telling, surroundings, FarmCommands.profiles(picture), at);
            var machine = machine(command, picture);
            MachineNow now = room.of(machine);
            var nights = new MachineNights(picture, telling, FarmCommands.profiles(picture))
                    .of(machine, at.minus(NIGHTS), at);
            var sensors = new PlaceSensors(store.readings(), picture, surroundings)
                    .of(new ReadingPlace.InMachine(machine), at.minus(PlaceSensors.LOOKED_BACK), at);
            Say.answer(command, ClimateAnswer.of(now, nights, sensors, at));
            return Status.DONE;
        }
    }

    private static Instant at(FarmCommand command) {
        try {
            return command.given("at")
                    .map(text -> OffsetDateTime.parse(text).toInstant())
                    .orElseGet(Instant::now);
        } catch (DateTimeException notAnInstant) {
            throw new Refused("--at \"" + command.given("at").orElse("")
                    + "\" is not an instant. Nothing was done. Write it as 2027-05-01T12:00-05:00.");
        }
    }

    private static MachineName machine(FarmCommand command, Picture picture) {
        var name = command.needed("machine");
        var known = picture.machines().keySet().stream().map(MachineName::text).toList();
        if (!known.contains(name)) {
            throw new Refused("There is no machine \"" + name + "\" in the book. Nothing was done. "
                    + Near.to(name, known)
                            .map(near -> "Is it \"" + near + "\"?")
                            .orElse(
                                    known.isEmpty()
                                            ? "None is in it yet."
                                            : "It has " + String.join(", ", known) + "."));
        }
        return new MachineName(name);
    }

    /** The barometer where one was read; else the farm's height; else sea level. */
    private static Surroundings surroundings(FarmCommand command, Habits habits) {
        try {
            var pressure = command.given("pressure").map(Pressure::parse);
            var height = command.given("altitude").map(Altitude::parse);
            if (pressure.isPresent() && height.isPresent()) {
                throw new Refused("Give --altitude or --pressure, not both. Nothing was done.");
            }
            var noted = height.or(() -> Optional.ofNullable(habits.altitude()));
            return new Surroundings(
                    pressure.or(() -> noted.map(h -> StandardAtmosphere.at(h).pressure()))
                            .orElse(Pressure.SEA_LEVEL),
                    switch (habits.wetBulbAir()) {
                        case MOVING -> Ventilation.ASPIRATED;
                        case STILL -> Ventilation.STILL;
                    });
        } catch (OutOfRange refused) {
            throw new Refused(refused.getMessage() + " Nothing was done.");
        }
    }
}
