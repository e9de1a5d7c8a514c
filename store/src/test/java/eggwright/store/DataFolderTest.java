package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import eggwright.book.entry.EggsCounted;
import eggwright.book.entry.Entry;
import eggwright.book.entry.Origin;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PenName;
import eggwright.book.name.PersonName;
import eggwright.book.store.Offered;
import eggwright.trade.Species;
import eggwright.wire.EntryCodec;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DataFolderTest {
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

    /** Also of what was acknowledged a moment ago and lies in the log beside the file. */
    @Test
    void head_isThatOfTheOpenBook_whileAnotherWrites() {
        var data = DataFolder.at(folder);
        try (var store = data.write()) {
            assertEquals(store.head(), data.head());
            for (int id = 1; id <= 3; id++) {
                store.append(count(store.farm(), id, 50 + id), NOW);
                assertEquals(store.head(), data.head());
                assertEquals(id, data.head().count());
            }
        }
        assertEquals(3, data.head().count());
        var empty = DataFolder.at(folder.resolve("empty"));
        assertEquals(StoreFault.Why.NO_BOOK, why(empty::head));
    }

    @Test
    void folderWithoutABook_isRefusedForReading_andNothingIsMade() {
        var empty = folder.resolve("empty");
        assertThrows(StoreFault.class, () -> DataFolder.at(empty).read());
        assertFalse(Files.exists(empty));
    }

    private static StoreFault.Why why(Executable opening) {
        return assertThrows(StoreFault.class, opening).why();
    }

    private static String message(Executable opening) {
        return String.valueOf(assertThrows(StoreFault.class, opening).getMessage());
    }

    private Map<String, String> everything() throws IOException {
        var files = new TreeMap<String, String>();
        try (var walk = Files.walk(folder)) {
            for (var file : walk.filter(Files::isRegularFile).toList()) {
                files.put(file.toString(), HexFormat.of().formatHex(Files.readAllBytes(file)));
            }
        }
        return files;
    }

    /** A book with one entry and no log beside it. */
    private Path book() {
        try (var store = DataFolder.at(folder).write()) {
            store.append(count(store.farm(), 1, 54), NOW);
        }
        return folder.resolve(DataFolder.BOOK);
    }

    private static void patch(Path file, long at, int value) throws IOException {
        try (var bytes = new RandomAccessFile(file.toFile(), "rw")) {
            bytes.seek(at);
            bytes.writeInt(value);
        }
    }

    @Test
    void newerBook_isRefused_andNothingInTheFolderIsTouched() throws Exception {
        patch(book(), 60, 99);
        Files.delete(folder.resolve("writer.lock"));
        var before = everything();
        assertEquals(StoreFault.Why.NEWER_BOOK, why(DataFolder.at(folder)::write));
        assertEquals(StoreFault.Why.NEWER_BOOK, why(DataFolder.at(folder)::read));
        assertEquals(before, everything());
    }

    @Test
    void olderBook_isNotReadUntilItWasBroughtUp() throws Exception {
        patch(book(), 60, 0);
        assertEquals(StoreFault.Why.OLDER_BOOK, why(DataFolder.at(folder)::read));
    }

    @ParameterizedTest
    @CsvSource({"0, it has 0 bytes", "60, it has 60 bytes", "8192, it has 8192 bytes of", "9000, it has 9000 bytes of"})
    void truncatedBook_isNamed_andLeftAsItIs(long length, String told) throws Exception {
        var file = book();
        try (var bytes = new RandomAccessFile(file.toFile(), "rw")) {
            bytes.setLength(length);
        }
        var before = everything();
        for (Executable opening : List.<Executable>of(DataFolder.at(folder)::write, DataFolder.at(folder)::read)) {
            assertTrue(message(opening).startsWith(file + " was cut short: " + told), message(opening));
            assertEquals(StoreFault.Why.DAMAGED, why(opening));
        }
        assertEquals(before, everything());
    }

    @Test
    void otherFiles_areNotTakenForABook_andLeftAsTheyAre() throws Exception {
        var file = folder.resolve(DataFolder.BOOK);
        Files.writeString(file, "set,set_on,species,tray,eggs\n".repeat(20));
        assertEquals(StoreFault.Why.NOT_A_BOOK, why(DataFolder.at(folder)::write));
        Files.delete(file);
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement()) {
            statement.execute("create table song (name text)");
        }
        var before = everything();
        assertEquals(StoreFault.Why.NOT_A_BOOK, why(DataFolder.at(folder)::write));
        assertEquals(StoreFault.Why.NOT_A_BOOK, why(DataFolder.at(folder)::read));
        assertEquals(before, everything());
    }

    @Test
    void bookLeftUnfinishedByAPowerCut_isMadeAnew() throws Exception {
        Files.writeString(folder.resolve("book.sqlite.unfinished"), "half");
        DataFolder.at(folder).write().close();
        assertFalse(Files.exists(folder.resolve("book.sqlite.unfinished")));
        assertTrue(DataFolder.at(folder).hasBook());
    }

    @Test
    void secondWriter_isToldWhoHoldsTheBook() {
        try (var store = DataFolder.at(folder).write()) {
            assertEquals(0, store.count());
            var told = message(DataFolder.at(folder)::write);
            assertTrue(told.contains("process " + ProcessHandle.current().pid() + " since "), told);
        }
    }

    @Test
    void folderThatCannotBeMade_isNamed() throws Exception {
        var file = Files.writeString(folder.resolve("notes.txt"), "Not a folder");
        assertEquals(StoreFault.Why.NOT_WRITABLE, why(DataFolder.at(file.resolve("book"))::write));
    }

    @Test
    void writeProtectedFolder_isRefusedForWriting_andReadAllTheSame() throws Exception {
        book();
        Files.delete(folder.resolve("writer.lock"));
        assertTrue(folder.toFile().setWritable(false));
        try {
            assumeFalse(Files.isWritable(folder), "This user may write everywhere");
            assertEquals(StoreFault.Why.NOT_WRITABLE, why(DataFolder.at(folder)::write));
            try (var reader = DataFolder.at(folder).read()) {
                assertEquals(1, reader.all().size());
            }
        } finally {
            assertTrue(folder.toFile().setWritable(true));
        }
    }

    @Test
    void folderMayHaveAnyName() {
        var odd = folder.resolve("what? 100% of #7 & more");
        try (var store = DataFolder.at(odd).write()) {
            store.append(count(store.farm(), 1, 54), NOW);
        }
        try (var store = DataFolder.at(odd).read()) {
            assertEquals(1, store.count());
        }
        assertTrue(Files.exists(odd.resolve(DataFolder.BOOK)));
    }
}
