package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.sql.SQLException;
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
            Migrations.step(connection, "create table brooder (farm text); create table perch (farm text);", 2);
            var fault = assertThrows(StoreFault.class, () -> BookFile.version(book));
            assertEquals(StoreFault.Why.NEWER_BOOK, fault.why());
        }
    }

    @Test
    void step_thatFails_leavesTheBookAsItWas() throws Exception {
        DataFolder.at(folder).write().close();
        var book = folder.resolve(DataFolder.BOOK);
        try (var connection = Connections.writing(book)) {
            assertThrows(
                    SQLException.class,
                    () -> Migrations.step(connection, "create table brooder (farm text); create table entry (x);", 2));
            try (var tables = connection.createStatement();
                    var rows = tables.executeQuery("select count(*) from sqlite_schema where name = 'brooder'")) {
                assertEquals(0, rows.getInt(1));
            }
        }
        assertEquals(Migrations.VERSION, BookFile.version(book));
    }
}
