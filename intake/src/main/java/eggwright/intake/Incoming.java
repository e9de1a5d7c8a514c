package eggwright.intake;

import eggwright.intake.file.LoggerFiles;
import eggwright.intake.folder.WatchedFolder;
import eggwright.intake.message.Intake;
import eggwright.intake.mqtt.Broker;
import eggwright.intake.mqtt.BrokerState;
import eggwright.intake.sensor.Sensors;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * All ways by which readings come in.
 *
 * @param broker how it stands with the broker, asked for each page; empty where none is listened to
 * @param folder what came of the last look; empty where none is watched
 */
public record Incoming(
        Sensors sensors,
        Intake intake,
        LoggerFiles files,
        Optional<Supplier<Heard>> broker,
        Optional<Supplier<WatchedFolder.Looked>> folder) {
    /** A broker that is listened to. */
    public record Heard(Broker broker, BrokerState state) {}

    /** Without a broker and a folder. */
    public Incoming(Sensors sensors, Intake intake, LoggerFiles files) {
        this(sensors, intake, files, Optional.empty(), Optional.empty());
    }
}
