package eggwright.store;

import eggwright.book.store.Offered;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Locale;

/**
 * Puts an entry in its row, as the next number, unless its id is there already. Prepared once: an append is this, a commit
 * and nothing else.
 */
final class EntryInsert implements AutoCloseable {
    private final PreparedStatement insert;

    EntryInsert(Connection connection) throws SQLException {
        insert = connection.prepareStatement("""
                insert into entry (farm, seq, id, kind, happened_at, noted_at, received_at, clock_offset_ms,
                                   who, device, origin, payload_version, written, written_sha256)
                select ?1, coalesce(max(seq), 0) + 1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13
                from entry
                where farm = ?1
                on conflict (farm, id) do nothing
                """);
    }

    /** What became of a row. */
    enum Put {
        ADDED,
        ID_WAS_THERE
    }

    Put put(Offered offered, Instant received) throws SQLException {
        var entry = offered.entry();
        insert.setString(1, entry.farm().text());
        insert.setBytes(2, EntryRows.bytes(entry.id()));
        insert.setString(3, entry.payload().kindWord());
        insert.setString(4, entry.happened().toInstant().toString());
        insert.setString(5, entry.noted().toInstant().toString());
        insert.setString(6, received.toString());
        insert.setLong(7, offered.clockOffset().toMillis());
        insert.setString(8, entry.who().text());
        insert.setString(9, entry.device().text());
        insert.setString(10, entry.origin().name().toLowerCase(Locale.ROOT));
        insert.setInt(11, entry.payloadVersion());
        insert.setString(12, offered.written());
        insert.setBytes(13, Digests.of(offered.written()));
        return insert.executeUpdate() == 0 ? Put.ID_WAS_THERE : Put.ADDED;
    }

    @Override
    public void close() throws SQLException {
        insert.close();
    }
}
