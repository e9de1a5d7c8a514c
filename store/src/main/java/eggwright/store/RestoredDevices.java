package eggwright.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;

/**
 * Puts out whoever a backup would let in. It knows the devices, codes, sensors and the passphrase of its own day; one that was
 * let go, used or changed since would be good again.
 */
final class RestoredDevices {
    private static final int DEVICES_SINCE = 2;
    private static final int SENSORS_SINCE = 4;

    private RestoredDevices() {}

    /**
     * Lets all devices go, revokes the tokens of all sensors, and forgets codes and passphrase. Names of devices stay, so that none is given twice.
     *
     * @param copy of a book of any version; the oldest have no devices
     */
    static void letGo(Connection copy, Instant now) throws SQLException {
        if (!Migrations.has(copy, DEVICES_SINCE)) {
            return;
        }
        if (Migrations.has(copy, SENSORS_SINCE)) {
            end(copy, now, """
                    update sensor
                    set revoked_at = ?
                    where revoked_at is null
                    """);
        }
        end(copy, now, """
                update device
                set let_go_at = ?
                where let_go_at is null
                """);
        try (var forget = copy.createStatement()) {
            forget.executeUpdate("delete from joining_code");
            forget.executeUpdate("delete from passphrase");
        }
    }

    private static void end(Connection copy, Instant now, String sql) throws SQLException {
        try (var update = copy.prepareStatement(sql)) {
            update.setString(1, now.toString());
            update.executeUpdate();
        }
    }
}
