package eggwright.cli.farm;

import eggwright.book.store.EntryStore;
import eggwright.cli.voice.Status;
import eggwright.desk.Desk;
import eggwright.desk.DeskNotOpened;
import eggwright.desk.Reach;
import eggwright.desk.farm.FarmDesk;
import eggwright.desk.joining.Devices;
import eggwright.desk.network.Announcement;
import eggwright.desk.network.Lan;
import eggwright.invented.DemoSeason;
import eggwright.store.DataFolder;
import eggwright.store.SqliteEntryStore;
import eggwright.wire.EntryCodec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Opens the desk: on the farm's own book, or on the invented farm's. */
final class ServeCommands {
    private static final OptionSpec PORT =
            FarmCommand.option("port", "PORT", "0 for any free one; 4747 where not given");

    private static final Duration LONGEST_CLOSING = Duration.ofSeconds(5);

    /** The server tells of its parts at length when it starts, and would bury the few lines that a person needs. */
    private static final List<Logger> WORDY =
            List.of(Logger.getLogger("io.javalin"), Logger.getLogger("org.eclipse.jetty"));

    private ServeCommands() {}

    static CommandSpec serve() {
        return FarmCommand.of(
                "serve",
                "The desk on the farm's own book; for this machine only, unless told otherwise.",
                "eggwright serve --data farm --lan",
                command -> {
                    var broker = ListenOptions.broker(command);
                    var folder = ListenOptions.folder(command);
                    try (var store = command.data().write();
                            var listening = Listening.to(store, broker, folder)) {
                        var devices = devices(store);
                        var lan = LanOptions.read(command, store, devices);
                        return open(
                                command,
                                command.data(),
                                store,
                                new Around(devices, lan, listening, () -> ListenOptions.tell(command, broker, folder)),
                                "The book is in " + command.data().path() + ".");
                    }
                },
                Stream.of(List.of(PORT), LanOptions.ALL, ListenOptions.ALL)
                        .flatMap(List::stream)
                        .toList());
    }

    static CommandSpec demo() {
        return FarmCommand.of(
                "demo",
                "The desk on an invented farm in mid-season, in a throw-away folder.",
                "eggwright demo",
                ServeCommands::runDemo,
                List.of(PORT));
    }

    private static int runDemo(FarmCommand command) {
        try {
            var folder = Files.createTempDirectory("eggwright-demo");
            try {
                var now = Instant.now();
                var season = DemoSeason.of(now, ZoneId.systemDefault());
                var data = DataFolder.at(folder);
                try (var store = data.write(season.farm())) {
                    if (store.bringIn(season.entries()) instanceof EntryStore.Batch.NoneKept(var why)) {
                        throw new IllegalStateException("The invented season was not kept: " + why.getFirst());
                    }
                    DemoReadings.bringIn(store.readings(), now);
                    try (var listening = Listening.to(store, Optional.empty(), Optional.empty())) {
                        return open(
                                command,
                                data,
                                store,
                                new Around(devices(store), Optional.empty(), listening, () -> {}),
                                "This is an invented farm. What you note here is thrown away when you stop.");
                    }
                }
            } finally {
                remove(folder);
            }
        } catch (IOException refused) {
            throw FarmCommands.refused(
                    "No throw-away folder could be made (" + refused.getMessage() + "). Nothing was changed.");
        }
    }

    private static void remove(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static Devices devices(SqliteEntryStore store) {
        return new Devices(new StoredDevices(store.devices()), InstantSource.system(), new SecureRandom());
    }

    /**
     * What stands around a desk.
     *
     * @param tell says to the person at the terminal what else it listens to
     */
    private record Around(Devices devices, Optional<Lan> lan, Listening listening, Runnable tell) {}

    private static int open(FarmCommand command, DataFolder data, SqliteEntryStore store, Around around, String about) {
        var port = command.given("port").orElse("4747");
        if (!port.matches("\\d{1,5}") || Integer.parseInt(port) > 65535) {
            throw FarmCommands.refused(
                    "--port \"" + port + "\" is not a port. Nothing was done. Write a number from 0 to 65535.");
        }
        try (var keeper = new TodayKeeper(data, store)) {
            return open(command, store, around, about, Integer.parseInt(port), keeper);
        }
    }

    private static int open(
            FarmCommand command, SqliteEntryStore store, Around around, String about, int port, TodayKeeper keeper) {
        var lan = around.lan();
        var setup = FarmDesk.setup(
                store,
                store.people(),
                store.readings(),
                EntryCodec::write,
                EntryCodec::version,
                InstantSource.system(),
                new SecureRandom(),
                ZoneId.systemDefault(),
                port,
                new FarmDesk.Company(
                        around.devices(),
                        lan.<Reach>map(Reach.Network::new).orElseGet(Reach.ThisMachine::new),
                        picture -> {
                            keeper.look(picture);
                            around.listening().look(picture);
                        },
                        Optional.of(around.listening().incoming())));
        WORDY.forEach(one -> one.setLevel(Level.WARNING));
        try (var desk = Desk.open(setup)) {
            command.out().println("The desk is open at " + desk.address());
            around.listening().begin();
            around.tell().run();
            if (lan.isPresent()) {
                try (var announcement = Announcement.of(lan.get())) {
                    LanOptions.tell(command, lan.get(), announcement.trouble());
                    return stay(command, about);
                }
            }
            return stay(command, about);
        } catch (DeskNotOpened taken) {
            throw FarmCommands.refused(String.valueOf(taken.getMessage()));
        }
    }

    /**
     * Until it is stopped from outside; then the machine waits until the desk and the book are closed, and a throw-away
     * folder is thrown away.
     */
    private static int stay(FarmCommand command, String about) {
        command.out().println(about + " Stop it with Ctrl and C.");
        command.out().flush();
        var stop = new CountDownLatch(1);
        var open = Thread.currentThread();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            stop.countDown();
            try {
                open.join(LONGEST_CLOSING);
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
            }
        }));
        try {
            stop.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return Status.DONE;
    }
}
