package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore.Extent;
import eggwright.climate.reading.ReadingStore.Taken;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.SensorName;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteReadingStoreTest {
    private static final Instant EVENING = Instant.parse("2027-04-05T23:58:00Z");
    private static final Channel AIR = channel(new ReadingPlace.InMachine(new MachineName("Setter 1")));
    private static final Channel EGG_ROOM = channel(new ReadingPlace.EggRoom());

    @TempDir
    private Path folder;

    private static Channel channel(ReadingPlace place) {
        return new Channel(place, SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT);
    }

    /** One a minute from the evening on; the third is of the next day. */
    private static Readings minutes(int first, double... values) {
        var millis = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            millis[i] = EVENING.plusSeconds(60L * (first + i)).toEpochMilli();
        }
        return Readings.of(millis, values);
    }

    private static Readings all(SqliteReadingStore readings, Channel channel) {
        return readings.between(channel, Instant.EPOCH, Instant.parse("2100-01-01T00:00:00Z"));
    }

    @Test
    void readings_areThereDigitForDigit_whenTheBookIsOpenedAgain() {
        try (var book = DataFolder.at(folder).write()) {
            assertEquals(new Taken(4, 0), book.readings().take(AIR, minutes(0, 99.5, 99.6, 99.4, 99.5)));
            book.readings().take(EGG_ROOM, minutes(0, 58.1));
        }
        try (var book = DataFolder.at(folder).read()) {
            assertEquals(minutes(0, 99.5, 99.6, 99.4, 99.5), all(book.readings(), AIR));
            assertEquals(List.of(AIR, EGG_ROOM), book.readings().channels());
            assertEquals(
                    Optional.of(new Extent(EVENING, EVENING.plusSeconds(180))),
                    book.readings().extent(AIR));
        }
    }

    @Test
    void readings_areKeptOnce_howeverOftenAndInWhateverOrderTheyCome() {
        try (var book = DataFolder.at(folder).write()) {
            var readings = book.readings();
            readings.take(AIR, minutes(2, 99.4, 99.5));
            assertEquals(new Taken(2, 2), readings.take(AIR, minutes(0, 99.5, 99.6, 99.4, 99.5)));
            assertEquals(new Taken(0, 1), readings.take(AIR, minutes(1, 99.6)));
            assertEquals(minutes(0, 99.5, 99.6, 99.4, 99.5), all(readings, AIR));
        }
    }

    @Test
    void load_keepsNothing_whenItIsLeft() {
        try (var book = DataFolder.at(folder).write()) {
            try (var load = book.readings().load()) {
                load.add(AIR, EVENING.toEpochMilli(), 99.5);
            }
            assertEquals(List.of(), book.readings().channels());
        }
    }

    @Test
    void load_takesRowsInAnyOrder_overManyDays() {
        try (var book = DataFolder.at(folder).write()) {
            try (var load = book.readings().load()) {
                for (int i = 2999; i >= 0; i--) {
                    load.add(AIR, EVENING.plusSeconds(3600L * i).toEpochMilli(), 99.0 + i % 10 / 10.0);
                    load.add(EGG_ROOM, EVENING.plusSeconds(3600L * i).toEpochMilli(), 58.0);
                }
                assertEquals(new Taken(6000, 0), load.keep());
            }
            assertEquals(3000, all(book.readings(), AIR).count());
            assertEquals(3000, all(book.readings(), EGG_ROOM).count());
        }
    }

    @Test
    void readings_areInTheBackup() {
        var backup = folder.resolve("backup.eggwright");
        try (var book = DataFolder.at(folder.resolve("farm")).write()) {
            book.readings().take(AIR, minutes(0, 99.5));
            Backups.backUp(book, backup);
        }
        Backups.restore(backup, DataFolder.at(folder.resolve("again")));
        try (var again = DataFolder.at(folder.resolve("again")).read()) {
            assertEquals(minutes(0, 99.5), all(again.readings(), AIR));
        }
    }

    @Test
    void readings_areRefusedInWords_whereTheBookIsOpenForReadingOnly() {
        DataFolder.at(folder).write().close();
        try (var book = DataFolder.at(folder).read()) {
            var fault = org.junit.jupiter.api.Assertions.assertThrows(
                    StoreFault.class, () -> book.readings().take(AIR, minutes(0, 99.5)));
            assertTrue(String.valueOf(fault.getMessage()).startsWith("The readings were not saved"), fault::getMessage);
        }
    }

    @Test
    void verify_findsADayThatWasTamperedWith() throws java.sql.SQLException {
        try (var book = DataFolder.at(folder).write()) {
            book.readings().take(AIR, minutes(0, 99.5, 99.6));
            assertTrue(Backups.verify(book).isWhole());
        }
        try (var connection = Connections.writing(DataFolder.at(folder).book());
                var update = connection.createStatement()) {
            update.executeUpdate("update reading_day set bytes = x'0105'");
        }
        try (var book = DataFolder.at(folder).read()) {
            assertEquals(
                    List.of(
                            "Readings of 2027-04-05, channel 1, cannot be read: A day of 5 readings does not fit into its bytes."),
                    Backups.verify(book).faults());
        }
    }
}
