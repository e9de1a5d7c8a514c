package eggwright.store;

import java.sql.SQLException;

/**
 * A disk that is full, as the book meets it: the database may take no further page, and answers each wish for one with
 * SQLITE_FULL, as it does when the file system has no room (https://sqlite.org/pragma.html#pragma_max_page_count).
 */
public final class FullDisk {
    private FullDisk() {}

    /** From now on the book cannot grow. */
    public static void fill(SqliteEntryStore store) {
        set(store, 1); // less than there are: SQLite takes it as "as many as now"
    }

    public static void makeRoom(SqliteEntryStore store) {
        set(store, 1_000_000);
    }

    private static void set(SqliteEntryStore store, int pages) {
        try {
            store.writer().alone("pragma max_page_count = " + pages);
        } catch (SQLException refused) {
            throw new IllegalStateException(refused);
        }
    }
}
