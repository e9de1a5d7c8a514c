package eggwright.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;

/**
 * Puts out whoever a backup would let in. It knows the devices, codes and the passphrase of its own day; one that was let
 * go, used or changed since would be good again.
 */
final class RestoredDevices {
    private RestoredDevices() {}

    /**
     * Lets all devices go, and forgets codes and passphrase. Names of devices stay, so that none is given twice.
     *
     * @param copy of a book of any version; the oldest have no devices
     */
    static void letGo(Connection copy, Instant now) throws SQLException {
        if (!knowsDevices(copy)) {
            return;
        }
        try (var update = copy.prepareStatement("""
                        update device
                        set let_go_at = ?
                        where let_go_at is null
                        """);
                var forget = copy.createStatement()) {
            update.setString(1, now.toString());
            update.executeUpdate();
            forget.executeUpdate("delete from joining_code");
            forget.executeUpdate("delete from passphrase");
        }
    }

    private static boolean knowsDevices(Connection copy) throws SQLException {
        try (var select = copy.createStatement();
                var rows = select.executeQuery("""
                        select count(*)
                        from sqlite_master
                        where type = 'table' and name = 'device'
                        """)) {
            return rows.next() && rows.getInt(1) == 1;
        }
    }
}
