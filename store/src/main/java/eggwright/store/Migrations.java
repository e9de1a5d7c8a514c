package eggwright.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/**
 * Brings the tables of a book to the version of this program: numbered files of plain SQL, each in one transaction with
 * the number it leads to. A file is never edited once released.
 */
final class Migrations {
    private static final List<String> FILES =
            List.of("0001_book.sql", "0002_devices.sql", "0003_readings.sql", "0004_sensors.sql");

    /** Version of the tables that this program writes. */
    static final int VERSION = FILES.size();

    /** The oldest version that can be read as it stands: its entries lie in the same tables. Backups are never rewritten. */
    static final int OLDEST_READ = 1;

    private Migrations() {}

    /** Whether a file has the tables of a version. A book that an older Eggwright wrote, opened for reading only, may not. */
    static boolean has(Connection connection, int since) throws SQLException {
        try (var version = connection.createStatement();
                var rows = version.executeQuery("pragma user_version")) {
            return rows.next() && rows.getInt(1) >= since;
        }
    }

    static void apply(Connection connection, int from) throws SQLException {
        for (int version = from + 1; version <= VERSION; version++) {
            step(connection, text(FILES.get(version - 1)), version);
        }
    }

    static void step(Connection connection, String sql, int version) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute("begin immediate");
            try {
                statement.executeUpdate(sql);
                statement.execute("pragma application_id = " + BookFile.APPLICATION);
                statement.execute("pragma user_version = " + version);
                statement.execute("commit");
            } catch (SQLException fault) {
                statement.execute("rollback");
                throw fault;
            }
            // The number has to stand in the file itself, where an older program looks before it touches anything.
            statement.execute("pragma wal_checkpoint(truncate)");
        }
    }

    private static String text(String name) {
        try (var file = Migrations.class.getResourceAsStream("sqlite/" + name)) {
            if (file == null) {
                throw new IllegalStateException("The migration " + name + " is missing");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
