package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.EggsCounted;
import eggwright.book.entry.Entry;
import eggwright.book.entry.Origin;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PenName;
import eggwright.book.name.PersonName;
import eggwright.book.store.EntryStore;
import eggwright.book.store.Offered;
import eggwright.book.store.Outcome;
import eggwright.book.store.Refusal;
import eggwright.testkit.walls.Walls;
import eggwright.trade.Species;
import eggwright.wire.EntryCodec;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteEntryStoreTest {
    private static final Instant NOW = Instant.parse("2027-04-13T12:00:00Z");
    private static final OffsetDateTime EVENING = OffsetDateTime.parse("2027-04-13T19:00-05:00");

    @TempDir
    private Path folder;

    private static Offered count(FarmId farm, int id, int eggs) {
        var entry = new Entry(
                EntryId.of(1000, 0, id),
                farm,
                EVENING,
                EVENING,
                new PersonName("Wren"),
                new DeviceName("desk"),
                Origin.NOTED,
                new EggsCounted(new PenName("4"), Species.PHEASANT, eggs),
                1);
        return new Offered(entry, EntryCodec.write(entry), Duration.ZERO);
    }

    @Test
    void append_survivesClosing_andTheSameEntryIsKeptOnce() {
        var data = DataFolder.at(folder);
        try (var store = data.write()) {
            assertInstanceOf(Outcome.Added.class, store.append(count(store.farm(), 1, 54), NOW));
            assertInstanceOf(Outcome.KeptBefore.class, store.append(count(store.farm(), 1, 54), NOW));
        }
        try (var store = data.read()) {
            assertEquals(1, store.count());
            assertEquals(
                    count(store.farm(), 1, 54).entry(), store.all().getFirst().entry());
            assertEquals(NOW, store.all().getFirst().received());
        }
    }

    @Test
    void otherContent_andOtherFarms_areRefused_andNothingIsOverwritten() {
        try (var store = DataFolder.at(folder).write()) {
            store.append(count(store.farm(), 1, 54), NOW);
            var other = assertInstanceOf(Outcome.Refused.class, store.append(count(store.farm(), 1, 55), NOW));
            assertInstanceOf(Refusal.OtherContent.class, other.why());
            var farm =
                    assertInstanceOf(Outcome.Refused.class, store.append(count(new FarmId("elsewhere"), 2, 55), NOW));
            assertInstanceOf(Refusal.OtherFarm.class, farm.why());
            assertEquals(1, store.count());
        }
    }

    @Test
    void batch_isKeptWhole_orNotAtAll() {
        try (var store = DataFolder.at(folder).write()) {
            store.append(count(store.farm(), 1, 54), NOW);
            var farm = store.farm();
            assertInstanceOf(
                    EntryStore.Batch.NoneKept.class,
                    store.appendAll(List.of(count(farm, 2, 1), count(farm, 1, 55)), NOW));
            assertEquals(1, store.count());
            assertInstanceOf(
                    EntryStore.Batch.AllKept.class,
                    store.appendAll(List.of(count(farm, 2, 1), count(farm, 1, 54)), NOW));
            assertEquals(2, store.count());
        }
    }

    @Test
    void secondWriter_saysSo_andReadersRunBeside() {
        var data = DataFolder.at(folder);
        try (var store = data.write()) {
            store.append(count(store.farm(), 1, 54), NOW);
            var fault = assertThrows(StoreFault.class, data::write);
            assertTrue(String.valueOf(fault.getMessage()).contains("Another Eggwright"));
            try (var reader = data.read()) {
                assertEquals(1, reader.count());
            }
        }
        data.write().close();
    }

    @Test
    void folderWithoutABook_isRefusedForReading_andNothingIsMade() {
        var empty = folder.resolve("empty");
        assertThrows(StoreFault.class, () -> DataFolder.at(empty).read());
        assertFalse(Files.exists(empty));
    }

    @Test
    void newerBook_isRefused_andNotTouched() throws Exception {
        var data = DataFolder.at(folder);
        data.write().close();
        var file = folder.resolve(DataFolder.BOOK);
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement()) {
            statement.execute("pragma journal_mode = delete");
            statement.execute("pragma user_version = 99");
        }
        var before = Files.readAllBytes(file);
        assertThrows(StoreFault.class, data::write);
        assertEquals(java.util.Arrays.hashCode(before), java.util.Arrays.hashCode(Files.readAllBytes(file)));
    }

    @Test
    void backup_isProvedEqual_andComesBack() {
        var data = DataFolder.at(folder.resolve("book"));
        var copy = folder.resolve("stick.eggwright");
        String digest;
        try (var store = data.write()) {
            for (int i = 0; i < 50; i++) {
                store.append(count(store.farm(), i, i), NOW);
            }
            digest = Backups.backUp(store, copy).digest();
            assertThrows(StoreFault.class, () -> Backups.backUp(store, copy));
        }
        var back = Backups.restore(copy, DataFolder.at(folder.resolve("again")));
        assertEquals(digest, back.digest());
        assertEquals(50, back.entries());
        assertThrows(StoreFault.class, () -> Backups.restore(copy, data));
    }

    @Test
    void verify_namesTheEntryThatWasChanged() throws Exception {
        var data = DataFolder.at(folder);
        try (var store = data.write()) {
            store.append(count(store.farm(), 1, 54), NOW);
        }
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(DataFolder.BOOK));
                var statement = connection.createStatement()) {
            statement.execute("update entry set written = replace(written, '54', '45')");
        }
        try (var store = data.read()) {
            var verified = Backups.verify(store);
            assertFalse(verified.isWhole());
            assertTrue(verified.faults().getFirst().contains("is not as it was received"));
        }
    }

    @Test
    void manyThreads_appendEachEntryOnce() throws Exception {
        try (var store = DataFolder.at(folder).write()) {
            var threads = new ArrayList<Thread>();
            for (int t = 0; t < 8; t++) {
                threads.add(Thread.ofVirtual().start(() -> {
                    for (int i = 0; i < 25; i++) {
                        store.append(count(store.farm(), i, i), NOW);
                    }
                }));
            }
            for (var thread : threads) {
                thread.join();
            }
            assertEquals(25, store.count());
        }
    }

    @Test
    void store_keepsToItsWalls() {
        Walls.ofRoom("eggwright.store").hold();
    }
}
