package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MigrationsTest {
    @TempDir
    private Path folder;

    @Test
    void step_leavesItsNumberInTheFileItself() throws Exception {
        DataFolder.at(folder).write().close();
        var book = folder.resolve(DataFolder.BOOK);
        try (var connection = Connections.writing(book)) {
            Migrations.step(
                    connection,
                    "create table brooder (farm text); create table perch (farm text);",
                    Migrations.VERSION + 1);
            var fault = assertThrows(StoreFault.class, () -> BookFile.version(book));
            assertEquals(StoreFault.Why.NEWER_BOOK, fault.why());
        }
    }

    /** As left behind by the version before devices could join: its tables, and one buyer. */
    private void bookOfVersion1(Path book) throws Exception {
        try (var connection = Connections.making(book);
                var statement = connection.createStatement();
                var sql = Migrations.class.getResourceAsStream("sqlite/0001_book.sql")) {
            Migrations.step(
                    connection, new String(Objects.requireNonNull(sql).readAllBytes(), StandardCharsets.UTF_8), 1);
            statement.execute("insert into farm values ('larkfield')");
            statement.execute("insert into buyer values ('larkfield', 'b-4821', 'Ada Marsh', '', '')");
        }
    }

    @Test
    void olderBook_isReadAsItStands_andBroughtUpWhenItIsWritten() throws Exception {
        var book = folder.resolve(DataFolder.BOOK);
        bookOfVersion1(book);
        try (var store = DataFolder.at(folder).read()) {
            assertEquals(1, store.people().all().size());
        }
        assertEquals(1, BookFile.version(book));

        try (var store = DataFolder.at(folder).write()) {
            assertEquals(1, store.people().all().size());
            assertEquals(List.of(), store.devices().all());
        }
        assertEquals(Migrations.VERSION, BookFile.version(book));
    }

    @Test
    void olderBackup_isRestored() throws Exception {
        var backup = folder.resolve("last-year.eggwright");
        bookOfVersion1(backup);
        var again = DataFolder.at(folder.resolve("again"));

        assertEquals(List.of(), Backups.restore(backup, again).faults());
        try (var store = again.write()) {
            assertEquals("larkfield", store.farm().text());
        }
    }

    @Test
    void step_thatFails_leavesTheBookAsItWas() throws Exception {
        DataFolder.at(folder).write().close();
        var book = folder.resolve(DataFolder.BOOK);
        try (var connection = Connections.writing(book)) {
            assertThrows(
                    SQLException.class,
                    () -> Migrations.step(
                            connection,
                            "create table brooder (farm text); create table entry (x);",
                            Migrations.VERSION + 1));
            try (var tables = connection.createStatement();
                    var rows = tables.executeQuery("select count(*) from sqlite_schema where name = 'brooder'")) {
                assertEquals(0, rows.getInt(1));
            }
        }
        assertEquals(Migrations.VERSION, BookFile.version(book));
    }
}
