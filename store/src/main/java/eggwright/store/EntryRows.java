package eggwright.store;

import eggwright.book.entry.Kept;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.store.StoreFault.Why;
import eggwright.wire.EntryCodec;
import eggwright.wire.Instants;
import eggwright.wire.ReadEntry;
import java.nio.ByteBuffer;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
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
                    new Kept(entry, Instants.utc(receivedAt), Duration.ofMillis(clockOffsetMillis));
                case ReadEntry.Malformed(var reason) -> throw unreadable(id, reason);
            };
        }
    }

    private static StoreFault unreadable(EntryId id, String reason) {
        return new StoreFault(
                Why.DAMAGED,
                "Entry " + id + " of the book cannot be read: " + reason
                        + " Nothing was changed. Run verify to find all such entries.");
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

    /** The entries after one, in the order received: no more of each row than folding needs. */
    static List<Kept> after(Connection connection, FarmId farm, long after) throws SQLException {
        try (var select = connection.prepareStatement("""
                select written, received_at, clock_offset_ms, id
                from entry
                where farm = ? and seq > ?
                order by seq
                """)) {
            select.setString(1, farm.text());
            select.setLong(2, after);
            var entries = new ArrayList<Kept>();
            try (var rows = select.executeQuery()) {
                while (rows.next()) {
                    switch (EntryCodec.read(rows.getString(1))) {
                        case ReadEntry.Whole(var entry) ->
                            entries.add(new Kept(
                                    entry, Instants.utc(rows.getString(2)), Duration.ofMillis(rows.getLong(3))));
                        case ReadEntry.Malformed(var reason) -> throw unreadable(id(rows.getBytes(4)), reason);
                    }
                }
            }
            return entries;
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

    /** The last of the first so many entries. */
    static Head head(Connection connection, FarmId farm, long count) throws SQLException {
        try (var select = connection.prepareStatement("""
                select seq, written_sha256
                from entry
                where farm = ? and seq <= ?
                order by seq desc
                limit 1
                """)) {
            select.setString(1, farm.text());
            select.setLong(2, count);
            try (var rows = select.executeQuery()) {
                return rows.next()
                        ? new Head(farm, rows.getLong(1), rows.getBytes(2))
                        : new Head(farm, 0, Digests.none());
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
