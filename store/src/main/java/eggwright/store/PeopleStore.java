package eggwright.store;

import eggwright.book.name.BuyerNumber;
import eggwright.book.store.Buyer;
import eggwright.book.store.BuyerStore;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Names and addresses behind buyer numbers, kept apart from the entries so that they can be erased. What is erased is
 * overwritten in the file; backups made before still hold it until they are thrown away.
 */
public final class PeopleStore implements BuyerStore {
    private final SqliteEntryStore store;

    PeopleStore(SqliteEntryStore store) {
        this.store = store;
    }

    @Override
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

    @Override
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

    @Override
    public Change keep(Buyer buyer) {
        return change(
                """
                insert into buyer (name, address, note, farm, buyer)
                values (?, ?, ?, ?, ?)
                on conflict (farm, buyer)
                do update set name = excluded.name, address = excluded.address, note = excluded.note
                """,
                buyer.name(),
                buyer.address(),
                buyer.note(),
                store.farm().text(),
                buyer.number().text());
    }

    @Override
    public Change erase(BuyerNumber number) {
        return change("""
                delete from buyer
                where farm = ? and buyer = ?
                """, store.farm().text(), number.text());
    }

    /** The log beside the file is emptied too: it holds what was there before. */
    private Change change(String sql, String... values) {
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
            return rows == 0 ? new Change.WasNotThere() : new Change.Done();
        } catch (SQLException fault) {
            return new Change.NotSaved(Reasons.of(fault));
        }
    }

    private static Buyer buyer(ResultSet rows) throws SQLException {
        return new Buyer(new BuyerNumber(rows.getString(1)), rows.getString(2), rows.getString(3), rows.getString(4));
    }
}
