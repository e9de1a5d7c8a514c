package eggwright.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a backup held when it was made; lies in the backup itself.
 *
 * @param rolling SHA-256 over all entries in the order received, in hex
 */
record Manifest(long entries, SortedMap<String, Long> byKind, String rolling) {
    static Manifest of(Verified book) {
        return new Manifest(book.entries(), book.byKind(), book.digest());
    }

    void write(Connection connection, String farm) throws SQLException {
        try (var insert = connection.prepareStatement("""
                insert into manifest (farm, entries, rolling_sha256)
                values (?, ?, ?)
                """)) {
            insert.setString(1, farm);
            insert.setLong(2, entries);
            insert.setBytes(3, HexFormat.of().parseHex(rolling));
            insert.executeUpdate();
        }
        try (var insert = connection.prepareStatement("""
                insert into manifest_kind (farm, kind, entries)
                values (?, ?, ?)
                """)) {
            for (var kind : byKind.entrySet()) {
                insert.setString(1, farm);
                insert.setString(2, kind.getKey());
                insert.setLong(3, kind.getValue());
                insert.executeUpdate();
            }
        }
    }

    /** Takes it out of a book that is in use again. */
    static void remove(Connection connection) throws SQLException {
        try (var delete = connection.createStatement()) {
            delete.executeUpdate("delete from manifest_kind");
            delete.executeUpdate("delete from manifest");
        }
    }

    /** Empty for a book that is no backup. */
    static Optional<Manifest> in(Connection connection) throws SQLException {
        var byKind = new TreeMap<String, Long>();
        try (var select = connection.createStatement();
                var rows = select.executeQuery("select kind, entries from manifest_kind")) {
            while (rows.next()) {
                byKind.put(rows.getString(1), rows.getLong(2));
            }
        }
        try (var select = connection.createStatement();
                var rows = select.executeQuery("select entries, rolling_sha256 from manifest")) {
            return rows.next()
                    ? Optional.of(
                            new Manifest(rows.getLong(1), byKind, HexFormat.of().formatHex(rows.getBytes(2))))
                    : Optional.empty();
        }
    }
}
