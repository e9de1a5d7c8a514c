package eggwright.store;

import eggwright.store.StoreFault.Why;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Who may use the desk from elsewhere: devices, the codes they join by, the owner's passphrase. No part of the history. */
public final class DeviceStore {
    private final SqliteEntryStore store;

    DeviceStore(SqliteEntryStore store) {
        this.store = store;
    }

    /** All devices that ever joined, those that were let go among them, by the time they joined. */
    public List<DeviceRow> all() {
        return store.ask(connection -> {
            try (var select = connection.prepareStatement("""
                    select device, name, role, came_by, token_sha256, joined_at, seen_at, ends_at, let_go_at
                    from device
                    where farm = ?
                    order by joined_at, device
                    """)) {
                select.setString(1, store.farm().text());
                var found = new ArrayList<DeviceRow>();
                try (var rows = select.executeQuery()) {
                    while (rows.next()) {
                        found.add(device(rows));
                    }
                }
                return List.copyOf(found);
            }
        });
    }

    /**
     * Keeps a device in the place of what was kept of it before.
     *
     * @throws StoreFault if the book cannot be written
     */
    public void keep(DeviceRow device) {
        change("The device " + device.name() + " was not kept", (connection, farm) -> {
            try (var insert = connection.prepareStatement("""
                    insert into device (
                      farm, device, name, role, came_by, token_sha256, joined_at, seen_at, ends_at, let_go_at)
                    values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                    on conflict (farm, device)
                    do update set
                      role = excluded.role,
                      seen_at = excluded.seen_at,
                      ends_at = excluded.ends_at,
                      let_go_at = excluded.let_go_at
                    """)) {
                return fill(
                                insert,
                                farm,
                                device.device(),
                                device.name(),
                                device.role(),
                                device.cameBy(),
                                device.tokenSha256(),
                                device.joined().toString(),
                                device.seen().toString(),
                                device.ends().toString(),
                                device.letGo() == null ? null : device.letGo().toString())
                        .executeUpdate();
            }
        });
    }

    /**
     * Keeps a code, and forgets those that have ended.
     *
     * @throws StoreFault if the book cannot be written
     */
    public void keep(CodeRow code) {
        change("The code was not kept", (connection, farm) -> {
            try (var forget = connection.prepareStatement("""
                    delete from joining_code
                    where farm = ? and ends_at <= ?
                    """);
                    var insert = connection.prepareStatement("""
                            insert into joining_code (farm, code_sha256, role, made_at, ends_at)
                            values (?, ?, ?, ?, ?)
                            """)) {
                fill(forget, farm, code.made().toString()).executeUpdate();
                return fill(
                                insert,
                                farm,
                                code.codeSha256(),
                                code.role(),
                                code.made().toString(),
                                code.ends().toString())
                        .executeUpdate();
            }
        });
    }

    /** How many codes could be used at this time. */
    public int codesAt(Instant now) {
        return store.ask(connection -> {
            try (var select = connection.prepareStatement("""
                            select count(*)
                            from joining_code
                            where farm = ? and ends_at > ?
                            """);
                    var rows = fill(select, store.farm().text(), now.toString()).executeQuery()) {
                return rows.next() ? rows.getInt(1) : 0;
            }
        });
    }

    /**
     * Takes a code out of the book: whoever gets it is the only one who does.
     *
     * @return empty where there is none, or it was taken before
     * @throws StoreFault if the book cannot be written
     */
    public Optional<CodeRow> take(String codeSha256) {
        return change("The code was not taken", (connection, farm) -> {
            try (var delete = connection.prepareStatement("""
                            delete from joining_code
                            where farm = ? and code_sha256 = ?
                            returning role, made_at, ends_at
                            """);
                    var rows = fill(delete, farm, codeSha256).executeQuery()) {
                return rows.next()
                        ? Optional.of(new CodeRow(
                                codeSha256,
                                rows.getString(1),
                                Instant.parse(rows.getString(2)),
                                Instant.parse(rows.getString(3))))
                        : Optional.empty();
            }
        });
    }

    /** The hash of the owner's passphrase; empty where none was set. */
    public Optional<String> passphrase() {
        return store.ask(connection -> {
            try (var select = connection.prepareStatement("""
                            select hash
                            from passphrase
                            where farm = ?
                            """);
                    var rows = fill(select, store.farm().text()).executeQuery()) {
                return rows.next() ? Optional.of(rows.getString(1)) : Optional.empty();
            }
        });
    }

    /**
     * Keeps the hash of a passphrase in the place of the one before.
     *
     * @throws StoreFault if the book cannot be written
     */
    public void keepPassphrase(String hash, Instant set) {
        change("The passphrase was not kept", (connection, farm) -> {
            try (var insert = connection.prepareStatement("""
                    insert into passphrase (farm, hash, set_at)
                    values (?, ?, ?)
                    on conflict (farm) do update set hash = excluded.hash, set_at = excluded.set_at
                    """)) {
                return fill(insert, farm, hash, set.toString()).executeUpdate();
            }
        });
    }

    private interface Change<T> {
        T on(Connection connection, String farm) throws SQLException;
    }

    private <T> T change(String otherwise, Change<T> change) {
        try {
            return store.writer()
                    .inOneGo((connection, entries) ->
                            Writer.Done.keep(change.on(connection, store.farm().text())));
        } catch (SQLException fault) {
            throw new StoreFault(
                    Why.NOT_WRITABLE, otherwise + ": " + Reasons.of(fault) + ". Make room, then try again.", fault);
        }
    }

    private static PreparedStatement fill(PreparedStatement statement, @Nullable String... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setString(i + 1, values[i]);
        }
        return statement;
    }

    private static DeviceRow device(ResultSet rows) throws SQLException {
        var letGo = rows.getString(9);
        return new DeviceRow(
                rows.getString(1),
                rows.getString(2),
                rows.getString(3),
                rows.getString(4),
                rows.getString(5),
                Instant.parse(rows.getString(6)),
                Instant.parse(rows.getString(7)),
                Instant.parse(rows.getString(8)),
                letGo == null ? null : Instant.parse(letGo));
    }
}
