package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.SensorName;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SensorStoreTest {
    private static final Instant NOON = Instant.parse("2027-05-12T12:00:00Z");
    private static final SensorRow SHELF = new SensorRow(
            "s1",
            new Channel(
                    new ReadingPlace.InMachine(new MachineName("Setter")),
                    new SensorName("Shelf 2"),
                    Quantity.AIR_TEMPERATURE,
                    ReadingUnit.FAHRENHEIT),
            "a".repeat(64),
            NOON,
            null);
    private static final SensorRow ROOM = new SensorRow(
            "s2",
            new Channel(new ReadingPlace.EggRoom(), new SensorName("Door"), Quantity.HUMIDITY, ReadingUnit.PERCENT),
            "b".repeat(64),
            NOON.plusSeconds(1),
            null);

    @TempDir
    private Path folder;

    private static SensorRow revoked(SensorRow row) {
        return new SensorRow(row.sensor(), row.channel(), row.tokenSha256(), row.added(), NOON.plusSeconds(60));
    }

    @Test
    void sensor_isKept_andRevoked_andFoundAgainInTheFile() {
        try (var store = DataFolder.at(folder).write()) {
            store.sensors().keep(SHELF);
            store.sensors().keep(ROOM);
            store.sensors().keep(revoked(SHELF));
        }
        try (var store = DataFolder.at(folder).read()) {
            assertEquals(List.of(revoked(SHELF), ROOM), store.sensors().all());
        }
    }

    @Test
    void token_belongsToOneSensor() {
        try (var store = DataFolder.at(folder).write()) {
            store.sensors().keep(SHELF);
            var other = new SensorRow("s3", ROOM.channel(), SHELF.tokenSha256(), NOON, null);
            assertThrows(StoreFault.class, () -> store.sensors().keep(other));
            assertEquals(List.of(SHELF), store.sensors().all());
        }
    }

    /** A token is revoked after the backup was made: the restored book may not let it in again. */
    @Test
    void restoredBook_letsNoSensorIn() {
        var stick = folder.resolve("stick.eggwright");
        try (var store = DataFolder.at(folder.resolve("farm")).write()) {
            store.sensors().keep(SHELF);
            Backups.backUp(store, stick);
        }
        var again = DataFolder.at(folder.resolve("again"));
        Backups.restore(stick, again);
        try (var back = again.read()) {
            var sensor = back.sensors().all().getFirst();
            assertEquals(SHELF.channel(), sensor.channel());
            assertTrue(sensor.revoked() != null, "its token is revoked");
        }
    }

    /** A book of the version before, read as it stands: its readings are there, and it knows of no sensor. */
    @Test
    void olderBook_knowsOfNone_andIsNotTouched() throws Exception {
        var book = folder.resolve(DataFolder.BOOK);
        try (var connection = Connections.making(book)) {
            int version = 0;
            for (var file : List.of("0001_book.sql", "0002_devices.sql", "0003_readings.sql")) {
                try (var sql = Migrations.class.getResourceAsStream("sqlite/" + file)) {
                    var text = new String(Objects.requireNonNull(sql).readAllBytes(), StandardCharsets.UTF_8);
                    Migrations.step(connection, text, ++version);
                }
            }
            try (var statement = connection.createStatement()) {
                statement.execute("insert into farm values ('larkfield')");
            }
        }
        try (var store = DataFolder.at(folder).read()) {
            assertEquals(List.of(), store.sensors().all());
        }
        assertEquals(3, BookFile.version(book));
        try (var store = DataFolder.at(folder).write()) {
            store.sensors().keep(SHELF);
            assertEquals(List.of(SHELF), store.sensors().all());
        }
    }
}
