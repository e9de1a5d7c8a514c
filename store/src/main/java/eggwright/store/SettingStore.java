package eggwright.store;

import eggwright.store.StoreFault.Why;
import java.sql.SQLException;
import java.util.Optional;

/** What the desk remembers for itself, such as its own name and who notes at it. Not part of the farm's history. */
public final class SettingStore {
    private final SqliteEntryStore store;

    SettingStore(SqliteEntryStore store) {
        this.store = store;
    }

    /** The value of a setting; empty where never kept. */
    public Optional<String> find(String name) {
        return store.ask(connection -> {
            try (var select = connection.prepareStatement("""
                    select value
                    from setting
                    where farm = ? and name = ?
                    """)) {
                select.setString(1, store.farm().text());
                select.setString(2, name);
                try (var rows = select.executeQuery()) {
                    return rows.next() ? Optional.of(rows.getString(1)) : Optional.empty();
                }
            }
        });
    }

    /**
     * Keeps a value in the place of the one before.
     *
     * @throws StoreFault if the book cannot be written
     */
    public void keep(String name, String value) {
        try {
            store.writer().inOneGo((connection, entries) -> {
                try (var insert = connection.prepareStatement("""
                        insert into setting (farm, name, value)
                        values (?, ?, ?)
                        on conflict (farm, name) do update set value = excluded.value
                        """)) {
                    insert.setString(1, store.farm().text());
                    insert.setString(2, name);
                    insert.setString(3, value);
                    return Writer.Done.keep(insert.executeUpdate());
                }
            });
        } catch (SQLException fault) {
            throw new StoreFault(
                    Why.NOT_WRITABLE,
                    "The setting " + name + " was not kept: " + Reasons.of(fault) + ". Make room, then try again.",
                    fault);
        }
    }
}
