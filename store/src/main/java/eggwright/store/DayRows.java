package eggwright.store;

import eggwright.book.name.FarmId;
import eggwright.climate.reading.DayCodec;
import eggwright.climate.reading.ReadingStore.Extent;
import eggwright.climate.reading.ReadingStore.Taken;
import eggwright.climate.reading.Readings;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The days of readings as rows. */
final class DayRows {
    private DayRows() {}

    static Readings between(Connection connection, FarmId farm, int channel, long from, long to) throws SQLException {
        try (var select = connection.prepareStatement("""
                select day, bytes
                from reading_day
                where farm = ? and channel = ? and day between ? and ?
                order by day
                """)) {
            select.setString(1, farm.text());
            select.setInt(2, channel);
            select.setLong(3, DayCodec.dayOf(from));
            select.setLong(4, DayCodec.dayOf(to));
            var days = new ArrayList<Readings>();
            try (var rows = select.executeQuery()) {
                while (rows.next()) {
                    days.add(read(rows.getLong(1), rows.getBytes(2)).between(from, to));
                }
            }
            return Readings.all(days);
        }
    }

    static Optional<Extent> extent(Connection connection, FarmId farm, int channel) throws SQLException {
        try (var select = connection.prepareStatement("""
                select min(first_ms), max(last_ms)
                from reading_day
                where farm = ?1 and channel = ?2
                  and day in (
                    (select min(day) from reading_day where farm = ?1 and channel = ?2),
                    (select max(day) from reading_day where farm = ?1 and channel = ?2))
                """)) {
            select.setString(1, farm.text());
            select.setInt(2, channel);
            try (var rows = select.executeQuery()) {
                rows.next();
                long first = rows.getLong(1);
                return rows.wasNull()
                        ? Optional.empty()
                        : Optional.of(new Extent(Instant.ofEpochMilli(first), Instant.ofEpochMilli(rows.getLong(2))));
            }
        }
    }

    /** Joins readings of one day with those that are there. */
    static Taken join(Connection connection, FarmId farm, int channel, long day, Readings offered) throws SQLException {
        var there = find(connection, farm, channel, day);
        var joined = there.and(offered);
        long fresh = (long) joined.count() - there.count();
        if (fresh > 0) {
            put(connection, farm, channel, day, joined);
        }
        return new Taken(fresh, offered.count() - fresh);
    }

    private static Readings find(Connection connection, FarmId farm, int channel, long day) throws SQLException {
        try (var select = connection.prepareStatement("""
                select bytes
                from reading_day
                where farm = ? and channel = ? and day = ?
                """)) {
            select.setString(1, farm.text());
            select.setInt(2, channel);
            select.setLong(3, day);
            try (var rows = select.executeQuery()) {
                return rows.next() ? read(day, rows.getBytes(1)) : Readings.NONE;
            }
        }
    }

    private static void put(Connection connection, FarmId farm, int channel, long day, Readings readings)
            throws SQLException {
        try (var insert = connection.prepareStatement("""
                insert into reading_day (farm, channel, day, readings, first_ms, last_ms, bytes)
                values (?, ?, ?, ?, ?, ?, ?)
                on conflict (farm, channel, day) do update
                set readings = excluded.readings,
                    first_ms = excluded.first_ms,
                    last_ms = excluded.last_ms,
                    bytes = excluded.bytes
                """)) {
            insert.setString(1, farm.text());
            insert.setInt(2, channel);
            insert.setLong(3, day);
            insert.setInt(4, readings.count());
            insert.setLong(5, readings.millis(0));
            insert.setLong(6, readings.millis(readings.count() - 1));
            insert.setBytes(7, DayCodec.write(day, readings));
            insert.executeUpdate();
        }
    }

    /** Days whose bytes are not what the row beside them says. */
    static List<String> faults(Connection connection, FarmId farm) throws SQLException {
        try (var select = connection.prepareStatement("""
                select day, channel, readings, first_ms, last_ms, bytes
                from reading_day
                where farm = ?
                """)) {
            select.setString(1, farm.text());
            var faults = new ArrayList<String>();
            try (var rows = select.executeQuery()) {
                while (rows.next()) {
                    var name = "Readings of " + LocalDate.ofEpochDay(rows.getLong(1)) + ", channel " + rows.getInt(2)
                            + ", ";
                    try {
                        var day = DayCodec.read(rows.getLong(1), rows.getBytes(6));
                        if (day.count() != rows.getInt(3)
                                || day.millis(0) != rows.getLong(4)
                                || day.millis(day.count() - 1) != rows.getLong(5)) {
                            faults.add(name + "are not as they were kept.");
                        }
                    } catch (IllegalArgumentException damaged) {
                        faults.add(name + "cannot be read: " + damaged.getMessage() + ".");
                    }
                }
            }
            return faults;
        }
    }

    private static Readings read(long day, byte[] bytes) throws SQLException {
        try {
            return DayCodec.read(day, bytes);
        } catch (IllegalArgumentException damaged) {
            throw new SQLException(damaged.getMessage(), damaged);
        }
    }
}
