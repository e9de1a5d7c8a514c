package eggwright.store;

import eggwright.book.name.BuyerNumber;
import eggwright.store.StoreFault.Why;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Names and addresses behind buyer numbers, kept apart from the entries so that they can be erased. What is erased is
 * overwritten in the file; backups made before still hold it until they are thrown away.
 */
public final class PeopleStore {
    private final SqliteEntryStore store;

    PeopleStore(SqliteEntryStore store) {
        this.store = store;
    }

    /** What became of somebody who was to be erased. */
    public enum Erased {
        ERASED,
        WAS_NOT_THERE
    }

    /** All buyers, by number. */
    public List<Buyer> all() {
        return store.ask(connection -> {
            try (var select = connection.prepareStatement("""
                    select buyer, name, address, note
                    from buyer
                    where farm = ?
                    """)) {
                select.setString(1, store.farm().text());
                var found = new ArrayList<Buyer>();
                try (var rows = select.executeQuery()) {
                    while (rows.next()) {
                        found.add(buyer(rows));
                    }
                }
                found.sort(java.util.Comparator.comparing(Buyer::number));
                return List.copyOf(found);
            }
        });
    }

    /** One buyer; empty where never noted, or erased. */
    public Optional<Buyer> find(BuyerNumber number) {
        return store.ask(connection -> {
            try (var select = connection.prepareStatement("""
                    select buyer, name, address, note
                    from buyer
                    where farm = ? and buyer = ?
                    """)) {
                select.setString(1, store.farm().text());
                select.setString(2, number.text());
                try (var rows = select.executeQuery()) {
                    return rows.next() ? Optional.of(buyer(rows)) : Optional.empty();
                }
            }
        });
    }

    /**
     * Notes a buyer, in the place of what was noted under the number before.
     *
     * @throws StoreFault if the book cannot be written
     */
    public void keep(Buyer buyer) {
        change(
                """
                insert into buyer (name, address, note, farm, buyer)
                values (?, ?, ?, ?, ?)
                on conflict (farm, buyer)
                do update set name = excluded.name, address = excluded.address, note = excluded.note
                """,
                "The buyer was not kept",
                buyer.name(),
                buyer.address(),
                buyer.note(),
                store.farm().text(),
                buyer.number().text());
    }

    /**
     * Erases name, address and note for good; entries keep the bare number.
     *
     * @throws StoreFault if the book cannot be written
     */
    public Erased erase(BuyerNumber number) {
        int rows = change("""
                delete from buyer
                where farm = ? and buyer = ?
                """, "Nothing was erased", store.farm().text(), number.text());
        return rows == 0 ? Erased.WAS_NOT_THERE : Erased.ERASED;
    }

    /** The log beside the file is emptied too: it holds what was there before. */
    private int change(String sql, String otherwise, String... values) {
        try {
            int rows = store.writer().inOneGo((connection, entries) -> {
                try (var statement = connection.prepareStatement(sql)) {
                    for (int i = 0; i < values.length; i++) {
                        statement.setString(i + 1, values[i]);
                    }
                    return Writer.Done.keep(statement.executeUpdate());
                }
            });
            store.writer().alone("pragma wal_checkpoint(truncate)");
            return rows;
        } catch (SQLException fault) {
            throw new StoreFault(
                    Why.NOT_WRITABLE, otherwise + ": " + Reasons.of(fault) + ". Make room, then try again.", fault);
        }
    }

    private static Buyer buyer(ResultSet rows) throws SQLException {
        return new Buyer(new BuyerNumber(rows.getString(1)), rows.getString(2), rows.getString(3), rows.getString(4));
    }
}
