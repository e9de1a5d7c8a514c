package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Entry;
import eggwright.book.name.BuyerNumber;
import eggwright.book.store.Buyer;
import eggwright.book.store.Offered;
import eggwright.testkit.contracts.Notes;
import eggwright.wire.EntryCodec;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BackupsTest {
    private static final Instant NOW = Instant.parse("2027-04-13T12:00:00Z");
    private static final int ENTRIES = 50;
    private static final Buyer BUYER = new Buyer(new BuyerNumber("b-4821"), "Ada Marsh", "Mill Lane 3", "");

    @TempDir
    private Path folder;

    private Path stick() {
        return folder.resolve("stick.eggwright");
    }

    private DataFolder data() {
        return DataFolder.at(folder.resolve("book"));
    }

    private static void remark(SqliteEntryStore store, int number) {
        Entry entry = Notes.remark(store.farm(), number, "Remark " + number);
        store.append(new Offered(entry, EntryCodec.write(entry), Duration.ofMillis(number)), NOW);
    }

    private SqliteEntryStore filled() {
        var store = data().write();
        for (int i = 0; i < ENTRIES; i++) {
            remark(store, i);
        }
        store.people().keep(BUYER);
        return store;
    }

    private List<String> names() throws IOException {
        try (var list = Files.list(folder)) {
            return list.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void backup_isProvedEqual_andComesBack() {
        try (var store = filled()) {
            var copy = Backups.backUp(store, stick());
            assertEquals(new TreeMap<>(Map.of("remark", (long) ENTRIES)), copy.byKind());
            assertEquals(Backups.verify(store), copy);
            var again = DataFolder.at(folder.resolve("again"));
            assertEquals(copy, Backups.restore(stick(), again));
            try (var back = again.write()) {
                assertEquals(store.farm(), back.farm());
                assertEquals(store.all(), back.all());
                assertEquals(List.of(BUYER), back.people().all());
                remark(back, ENTRIES);
                assertEquals(List.of(), Backups.verify(back).faults());
            }
        }
    }

    @Test
    void backup_isOneFile_evenAfterItWasLookedAt() throws Exception {
        filled().close();
        try (var reader = data().read()) {
            Backups.backUp(reader, stick());
        }
        var bytes = Files.readAllBytes(stick());
        assertTrue(Backups.verifyFile(stick()).isWhole());
        assertEquals(List.of("book", "stick.eggwright"), names());
        org.junit.jupiter.api.Assertions.assertArrayEquals(bytes, Files.readAllBytes(stick()));
    }

    @Test
    void backup_isWhole_whileEntriesArrive() throws Exception {
        try (var store = filled()) {
            var desk = Thread.ofVirtual().start(() -> {
                for (int i = ENTRIES; i < 4 * ENTRIES; i++) {
                    remark(store, i);
                }
            });
            var copy = Backups.backUp(store, stick());
            desk.join();
            assertTrue(copy.isWhole());
            assertTrue(copy.entries() >= ENTRIES, copy.toString());
        }
    }

    @Test
    void backup_overAFile_isRefused() throws Exception {
        try (var store = filled()) {
            Files.writeString(stick(), "holiday pictures");
            var fault = assertThrows(StoreFault.class, () -> Backups.backUp(store, stick()));
            assertEquals(StoreFault.Why.IN_THE_WAY, fault.why());
            assertEquals("holiday pictures", Files.readString(stick()));
            var gone = assertThrows(
                    StoreFault.class, () -> Backups.backUp(store, folder.resolve("no such stick/copy.eggwright")));
            assertEquals(StoreFault.Why.NOT_WRITABLE, gone.why());
        }
    }

    /** A phone is lost after the backup was made: the restored book may not let it in again. */
    @Test
    void restoredBook_letsNoDeviceIn_andKeepsTheirNames() {
        try (var store = data().write()) {
            var phone = new DeviceRow(
                    "d1",
                    "Wren’s phone",
                    "hand",
                    "code",
                    "a".repeat(64),
                    NOW,
                    NOW,
                    NOW.plus(Duration.ofDays(400)),
                    null);
            store.devices().keep(phone);
            store.devices().keep(new CodeRow("c".repeat(64), "hand", NOW, NOW.plus(Duration.ofMinutes(10))));
            store.devices().keepPassphrase("hash", NOW);
            Backups.backUp(store, stick());
        }
        var again = DataFolder.at(folder.resolve("again"));
        Backups.restore(stick(), again);
        try (var back = again.write()) {
            var device = back.devices().all().getFirst();
            assertEquals("Wren’s phone", device.name());
            assertTrue(device.letGo() != null, "it is let go");
            assertEquals(0, back.devices().codesAt(NOW));
            assertEquals(Optional.empty(), back.devices().passphrase());
        }
    }

    @Test
    void restore_overABook_isRefused() {
        try (var store = filled()) {
            Backups.backUp(store, stick());
            var fault = assertThrows(StoreFault.class, () -> Backups.restore(stick(), data()));
            assertEquals(StoreFault.Why.IN_THE_WAY, fault.why());
            assertEquals(ENTRIES, store.count());
        }
    }

    @Test
    void restore_ofATruncatedBackup_leavesNothingBehind() throws Exception {
        try (var store = filled()) {
            Backups.backUp(store, stick());
        }
        try (var bytes = new RandomAccessFile(stick().toFile(), "rw")) {
            bytes.setLength(bytes.length() - 5000);
        }
        var fault =
                assertThrows(StoreFault.class, () -> Backups.restore(stick(), DataFolder.at(folder.resolve("again"))));
        assertTrue(String.valueOf(fault.getMessage()).startsWith(stick() + " was cut short"), fault.getMessage());
        assertFalse(Files.exists(folder.resolve("again")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "update entry set written = replace(written, 'Remark 7', 'Remark 8') where seq = 8 | is not as it was received.",
                "update entry set kind = 'looked' where seq = 8 | is filed under another id, farm, kind or instant than its text says.",
                "update entry set written = 'x' where seq = 8 | cannot be read: This line is not JSON",
                "delete from entry where seq = 8 | Entry number 8 is missing: the next one has number 9.",
                "delete from entry where seq = 50 | The manifest of this backup tells of 50 entries; 49 are there",
            })
    void verify_namesWhatWasChanged(String sql, String told) throws Exception {
        try (var store = filled()) {
            Backups.backUp(store, stick());
        }
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + stick());
                var statement = connection.createStatement()) {
            assertEquals(1, statement.executeUpdate(sql));
        }
        var verified = Backups.verifyFile(stick());
        assertTrue(verified.faults().stream().anyMatch(f -> f.contains(told)), verified.toString());
        var fault =
                assertThrows(StoreFault.class, () -> Backups.restore(stick(), DataFolder.at(folder.resolve("again"))));
        assertEquals(StoreFault.Why.DAMAGED, fault.why());
        assertFalse(Files.exists(folder.resolve("again")));
    }

    @Test
    void verify_saysSo_whenPagesAreOverwritten() throws Exception {
        filled().close();
        var book = folder.resolve("book").resolve(DataFolder.BOOK);
        try (var bytes = new RandomAccessFile(book.toFile(), "rw")) {
            bytes.seek(bytes.length() / 2);
            bytes.write(new byte[8192]);
        }
        try (var store = data().read()) {
            assertFalse(Backups.verify(store).isWhole());
        }
    }
}
