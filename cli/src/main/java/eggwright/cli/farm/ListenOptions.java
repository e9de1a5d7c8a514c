package eggwright.cli.farm;

import eggwright.intake.mqtt.Broker;
import eggwright.units.OutOfRange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;

/** From where {@code serve} takes readings beside its own door: a broker, a folder. Neither has to be there. */
final class ListenOptions {
    static final List<OptionSpec> ALL = List.of(
            FarmCommand.option("watch", "DIR", "take loggers' files that appear or grow in this folder"),
            FarmCommand.option("mqtt", "ADDRESS", "take readings from a broker, as mqtts://HOST:8883"),
            FarmCommand.option(
                    "mqtt-topic", "TOPIC", "before each sensor's token; " + Broker.USUAL_TOPIC + " where not given"),
            FarmCommand.option("mqtt-user", "NAME", "the desk's name at the broker"),
            FarmCommand.option("mqtt-password-file", "FILE", "a file that holds its password, and nothing else"),
            FarmCommand.option("mqtt-ca", "FILE", "certificate (PEM) of the authority that vouches for the broker"));

    private static final List<String> WITH_BROKER = List.of("mqtt-topic", "mqtt-user", "mqtt-password-file", "mqtt-ca");

    private ListenOptions() {}

    /** The folder to watch; empty where none was named. */
    static Optional<Path> folder(FarmCommand command) {
        return command.given("watch").map(Path::of).map(folder -> {
            if (!Files.isDirectory(folder)) {
                throw FarmCommands.refused("--watch: there is no folder " + folder
                        + ". Nothing was done. Make it first, with a sub-folder for each machine.");
            }
            return folder;
        });
    }

    /** The broker to listen to; empty where none was named. */
    static Optional<Broker> broker(FarmCommand command) {
        var address = command.given("mqtt");
        if (address.isEmpty()) {
            for (var option : WITH_BROKER) {
                if (command.given(option).isPresent()) {
                    throw FarmCommands.refused("--" + option
                            + " goes with --mqtt. Nothing was done. Add --mqtt ADDRESS, or leave it out.");
                }
            }
            return Optional.empty();
        }
        var user = command.given("mqtt-user");
        var password = command.given("mqtt-password-file").map(Path::of).map(ListenOptions::password);
        if (password.isPresent() && user.isEmpty()) {
            throw FarmCommands.refused("--mqtt-password-file goes with --mqtt-user. Nothing was done. Name the user.");
        }
        var authority = command.given("mqtt-ca").map(Path::of);
        authority.filter(file -> !Files.isReadable(file)).ifPresent(file -> {
            throw FarmCommands.refused("--mqtt-ca: " + file + " cannot be read. Nothing was done.");
        });
        try {
            var broker = Broker.of(
                    address.get(), command.given("mqtt-topic").orElse(Broker.USUAL_TOPIC), user, password, authority);
            if (authority.isPresent() && broker.scheme() == Broker.Scheme.MQTT) {
                throw FarmCommands.refused(
                        "--mqtt-ca goes with mqtts://, for mqtt:// is not encrypted. Nothing was done.");
            }
            return Optional.of(broker);
        } catch (OutOfRange wrong) {
            throw FarmCommands.refused("--mqtt: " + wrong.getMessage() + " Nothing was done.");
        }
    }

    /** Its first line; the end of the line is no part of it. */
    private static String password(Path file) {
        try {
            var lines = Files.readString(file, StandardCharsets.UTF_8).lines().toList();
            if (lines.size() != 1 || lines.getFirst().isEmpty()) {
                throw FarmCommands.refused("--mqtt-password-file: " + file
                        + " has to hold the password on one line, and nothing else. Nothing was done.");
            }
            return lines.getFirst();
        } catch (IOException unread) {
            throw FarmCommands.refused("--mqtt-password-file: " + file + " cannot be read (" + unread.getMessage()
                    + "). Nothing was done.");
        }
    }

    /** What a person has to know when the desk is open. */
    static void tell(FarmCommand command, Optional<Broker> broker, Optional<Path> folder) {
        broker.ifPresent(b -> {
            command.out()
                    .println("Readings are taken from " + b.address() + " under " + b.topic()
                            + "/TOKEN; how it stands with the broker is said under Settings, Sensors.");
            if (b.scheme() == Broker.Scheme.MQTT) {
                command.err()
                        .println(
                                "The way to this broker is not encrypted: whoever sees the network can read tokens, and"
                                        + " send readings in a sensor's name. Take mqtts where the broker can.");
            }
        });
        folder.ifPresent(f -> command.out()
                .println("Loggers' files are taken from " + f.toAbsolutePath().normalize()
                        + "; nothing there is moved or deleted."));
    }
}
