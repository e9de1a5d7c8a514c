package eggwright.store;

import eggwright.book.entry.Kept;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.store.StoreFault.Why;
import eggwright.wire.EntryCodec;
import eggwright.wire.ReadEntry;
import java.nio.ByteBuffer;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** The rows of the table of entries. */
final class EntryRows {
    private EntryRows() {}

    /**
     * An entry as it lies in the file.
     *
     * @param receivedAt UTC
     * @param writtenSha256 of the text when it was received, 32 bytes
     */
    record Row(
            long seq,
            EntryId id,
            String kind,
            String happenedAt,
            String receivedAt,
            long clockOffsetMillis,
            String written,
            byte[] writtenSha256) {
        /** @throws StoreFault if the text cannot be read as an entry */
        Kept kept() {
            return switch (EntryCodec.read(written)) {
                case ReadEntry.Whole(var entry) ->
                    new Kept(entry, Instant.parse(receivedAt), Duration.ofMillis(clockOffsetMillis));
                case ReadEntry.Malformed(var reason) ->
                    throw new StoreFault(
                            Why.DAMAGED,
                            "Entry " + id + " of the book cannot be read: " + reason
                                    + " Nothing was changed. Run verify to find all such entries.");
            };
        }
    }

    /** Takes one row. */
    interface Reading {
        void take(Row row);
    }

    static Optional<Row> find(Connection connection, FarmId farm, EntryId id) throws SQLException {
        try (var select = connection.prepareStatement("""
                select seq, id, kind, happened_at, received_at, clock_offset_ms, written, written_sha256
                from entry
                where farm = ? and id = ?
                """)) {
            select.setString(1, farm.text());
            select.setBytes(2, bytes(id));
            try (var rows = select.executeQuery()) {
                return rows.next() ? Optional.of(row(rows)) : Optional.empty();
            }
        }
    }

    /** Rows from after one up to another, in the order received. */
    static void each(Connection connection, FarmId farm, long after, long upTo, Reading reading) throws SQLException {
        try (var select = connection.prepareStatement("""
                select seq, id, kind, happened_at, received_at, clock_offset_ms, written, written_sha256
                from entry
                where farm = ? and seq > ? and seq <= ?
                order by seq
                """)) {
            select.setString(1, farm.text());
            select.setLong(2, after);
            select.setLong(3, upTo);
            try (var rows = select.executeQuery()) {
                while (rows.next()) {
                    reading.take(row(rows));
                }
            }
        }
    }

    /** The greatest number given; entries are numbered from 1 without gaps. */
    static long last(Connection connection, FarmId farm) throws SQLException {
        try (var select = connection.prepareStatement("""
                select coalesce(max(seq), 0)
                from entry
                where farm = ?
                """)) {
            select.setString(1, farm.text());
            try (var rows = select.executeQuery()) {
                return rows.getLong(1);
            }
        }
    }

    private static Row row(ResultSet rows) throws SQLException {
        return new Row(
                rows.getLong(1),
                id(rows.getBytes(2)),
                rows.getString(3),
                rows.getString(4),
                rows.getString(5),
                rows.getLong(6),
                rows.getString(7),
                rows.getBytes(8));
    }

    static byte[] bytes(EntryId id) {
        return ByteBuffer.allocate(16)
                .putLong(id.value().getMostSignificantBits())
                .putLong(id.value().getLeastSignificantBits())
                .array();
    }

    private static EntryId id(byte[] bytes) {
        var buffer = ByteBuffer.wrap(bytes);
        return new EntryId(new UUID(buffer.getLong(), buffer.getLong()));
    }
}
