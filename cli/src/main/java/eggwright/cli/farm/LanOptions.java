package eggwright.cli.farm;

import eggwright.book.fold.Ledger;
import eggwright.desk.joining.Devices;
import eggwright.desk.network.DeskName;
import eggwright.desk.network.FarmAuthority;
import eggwright.desk.network.KeysRefused;
import eggwright.desk.network.Lan;
import eggwright.store.SqliteEntryStore;
import eggwright.units.OutOfRange;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What {@code serve --lan} is told, and what it was told before: the desk’s name and port on the network are chosen once,
 * because what phones keep belongs to them.
 */
final class LanOptions {
    static final List<OptionSpec> ALL = List.of(
            FarmCommand.flag("lan", "let phones on the farm's network join, over https"),
            FarmCommand.option(
                    "name", "NAME", "of the desk on the network, kept from then on; made of the farm's name"),
            FarmCommand.option("https-port", "PORT", "for phones, kept from then on; 4748 where not given"),
            FarmCommand.flag("rename", "take another name or port than the one that was kept"));

    private static final String NAME = "desk.name";
    private static final String PORT = "desk.https-port";
    private static final String USUAL_PORT = "4748";
    private static final String FOLDER = "authority";

    private LanOptions() {}

    /** The desk on the network; empty where it was not asked for. */
    static Optional<Lan> read(FarmCommand command, SqliteEntryStore store, Devices devices) {
        if (!command.has("lan")) {
            for (var option : List.of("name", "https-port")) {
                if (command.given(option).isPresent()) {
                    throw FarmCommands.refused(
                            "--" + option + " goes with --lan. Nothing was done. Add --lan, or leave it out.");
                }
            }
            return Optional.empty();
        }
        var settings = store.settings();
        var keptName = settings.find(NAME);
        var keptPort = settings.find(PORT);
        var name = name(command.given("name").or(() -> keptName).orElseGet(() -> ofFarm(store)));
        var port = port(command.given("https-port").or(() -> keptPort).orElse(USUAL_PORT));
        if (!command.has("rename")) {
            keptName.ifPresent(kept -> unchanged("name", kept, name.text()));
            keptPort.ifPresent(kept -> unchanged("https-port", kept, Integer.toString(port)));
        }
        try {
            var authority = FarmAuthority.in(
                    command.data().path().resolve(FOLDER), name, InstantSource.system(), new SecureRandom());
            settings.keep(NAME, name.text());
            settings.keep(PORT, Integer.toString(port));
            return Optional.of(new Lan(name, port, authority, devices));
        } catch (KeysRefused refused) {
            throw FarmCommands.refused(String.valueOf(refused.getMessage()));
        }
    }

    private static String ofFarm(SqliteEntryStore store) {
        return DeskName.of(Ledger.of(store.all()).picture().farm().habits().farmName())
                .text();
    }

    private static DeskName name(String text) {
        try {
            return new DeskName(text);
        } catch (OutOfRange refused) {
            throw FarmCommands.refused("--name: " + refused.getMessage() + " Nothing was done.");
        }
    }

    private static int port(String text) {
        if (!text.matches("\\d{1,5}") || Integer.parseInt(text) > 65535 || Integer.parseInt(text) < 1) {
            throw FarmCommands.refused("--https-port \"" + text
                    + "\" is not a port that can be kept. Nothing was done. Write a number from 1 to 65535.");
        }
        return Integer.parseInt(text);
    }

    private static void unchanged(String option, String kept, String given) {
        if (!kept.equals(given)) {
            throw FarmCommands.refused(
                    "The desk is known to phones by --" + option + " " + kept + ", and --" + option + " "
                            + given
                            + " was given. Nothing was done. What a phone has not sent yet belongs to the old one: let every"
                            + " phone send first, then add --rename; each has to trust the desk and join anew.");
        }
    }

    /** What a person has to know when the desk is open. */
    static void tell(FarmCommand command, Lan lan, List<String> trouble) {
        lan.authority().said().forEach(command.err()::println);
        trouble.forEach(command.err()::println);
        command.out().println("On the network it is " + lan.address() + " and a phone begins at " + lan.firstSteps());
        command.out()
                .println("Fingerprint of its certificate: " + lan.authority().fingerprint());
    }
}
