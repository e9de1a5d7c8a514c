package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.intake.Incoming;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.folder.Watch;
import eggwright.intake.folder.WatchedFolder;
import eggwright.intake.message.Intake;
import eggwright.intake.mqtt.Broker;
import eggwright.intake.mqtt.BrokerLine;
import eggwright.intake.sensor.Sensors;
import eggwright.store.SqliteEntryStore;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/** All that listens while a desk is open: put together before the desk opens, begun when it is. */
final class Listening implements AutoCloseable {
    private final Incoming incoming;
    private final Optional<BrokerLine> line;
    private final Optional<WatchedFolder> folder;
    private Optional<Watch> watch = Optional.empty();
    private volatile FarmPlaces farm = new FarmPlaces(List.of(), ZoneOffset.UTC);

    private Listening(SqliteEntryStore store, Optional<Broker> broker, Optional<Path> watched) {
        var clock = InstantSource.system();
        var random = new SecureRandom();
        var memory = new StoredColumns(store.settings());
        var sensors = new Sensors(new StoredSensors(store.sensors()), clock, random);
        var intake = new Intake(sensors, store.readings(), clock);
        var files = new LoggerFiles(store.readings(), memory);
        this.line = broker.map(b -> BrokerLine.to(b, intake, clock, random));
        this.folder = watched.map(path -> new WatchedFolder(path, files, memory, () -> farm, clock));
        this.incoming = new Incoming(
                sensors,
                intake,
                files,
                line.map(l -> () -> new Incoming.Heard(l.broker(), l.state())),
                folder.map(f -> f::looked));
    }

    static Listening to(SqliteEntryStore store, Optional<Broker> broker, Optional<Path> watched) {
        return new Listening(store, broker, watched);
    }

    Incoming incoming() {
        return incoming;
    }

    /** The machines and the zone that files are placed by, from each picture of the book. */
    void look(Picture picture) {
        farm = FarmPlaces.of(picture);
    }

    /** Begins to look at the folder: when the farm is known. */
    void begin() {
        watch = folder.map(Watch::over);
    }

    @Override
    public void close() {
        watch.ifPresent(Watch::close);
        line.ifPresent(BrokerLine::close);
    }
}
