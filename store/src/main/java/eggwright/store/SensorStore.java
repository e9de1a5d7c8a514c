package eggwright.store;

import eggwright.store.StoreFault.Why;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Sensors with a token of their own. No part of the history: what they told is among the readings. */
public final class SensorStore {
    /** The first version of a farm's file that knows them. */
    private static final int SINCE = 4;

    private final SqliteEntryStore store;

    SensorStore(SqliteEntryStore store) {
        this.store = store;
    }

    /** All that were ever added, those that were revoked among them, by when they were added. */
    public List<SensorRow> all() {
        return store.ask(connection -> Migrations.has(connection, SINCE) ? all(connection) : List.<SensorRow>of());
    }

    private List<SensorRow> all(Connection connection) throws SQLException {
        try (var select = connection.prepareStatement("""
                select place, machine, name, quantity, unit, sensor, token_sha256, added_at, revoked_at
                from sensor
                where farm = ?
                order by added_at, sensor
                """)) {
            select.setString(1, store.farm().text());
            var found = new ArrayList<SensorRow>();
            try (var rows = select.executeQuery()) {
                while (rows.next()) {
                    var revoked = rows.getString(9);
                    found.add(new SensorRow(
                            rows.getString(6),
                            ChannelRows.channel(rows),
                            rows.getString(7),
                            Instant.parse(rows.getString(8)),
                            revoked == null ? null : Instant.parse(revoked)));
                }
            }
            return List.copyOf(found);
        }
    }

    /**
     * Keeps a sensor; of one that is known only that it was revoked changes.
     *
     * @throws StoreFault if the book cannot be written
     */
    public void keep(SensorRow sensor) {
        try {
            store.writer().inOneGo((connection, entries) -> Writer.Done.keep(put(connection, sensor)));
        } catch (SQLException fault) {
            throw new StoreFault(
                    Why.NOT_WRITABLE,
                    "The sensor " + sensor.channel().sensor() + " was not kept: " + Reasons.of(fault)
                            + ". Make room, then try again.",
                    fault);
        }
    }

    private int put(Connection connection, SensorRow sensor) throws SQLException {
        try (var insert = connection.prepareStatement("""
                insert into sensor (
                  farm, place, machine, name, quantity, unit, sensor, token_sha256, added_at, revoked_at)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                on conflict (farm, sensor) do update set revoked_at = excluded.revoked_at
                """)) {
            ChannelRows.set(insert, store.farm(), sensor.channel());
            insert.setString(7, sensor.sensor());
            insert.setString(8, sensor.tokenSha256());
            insert.setString(9, sensor.added().toString());
            insert.setString(
                    10, sensor.revoked() == null ? null : sensor.revoked().toString());
            return insert.executeUpdate();
        }
    }
}
