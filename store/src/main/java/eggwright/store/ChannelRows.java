package eggwright.store;

import eggwright.book.name.FarmId;
import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.SensorName;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The channels of a farm as rows; each has a number of its own. */
final class ChannelRows {
    private static final String MACHINE = "machine";
    private static final String EGG_ROOM = "egg_room";
    private static final String BROODER = "brooder";

    private ChannelRows() {}

    static List<Channel> all(Connection connection, FarmId farm) throws SQLException {
        try (var select = connection.prepareStatement("""
                select place, machine, sensor, quantity, unit
                from reading_channel
                where farm = ?
                order by channel
                """)) {
            select.setString(1, farm.text());
            var channels = new ArrayList<Channel>();
            try (var rows = select.executeQuery()) {
                while (rows.next()) {
                    channels.add(channel(rows));
                }
            }
            return channels;
        }
    }

    /** From the first five columns: place, machine, sensor, quantity, unit. */
    static Channel channel(ResultSet rows) throws SQLException {
        return new Channel(
                place(rows.getString(1), rows.getString(2)),
                new SensorName(rows.getString(3)),
                Quantity.ofWord(rows.getString(4)).orElseThrow(() -> new SQLException("unknown quantity")),
                ReadingUnit.ofSuffix(rows.getString(5)).orElseThrow(() -> new SQLException("unknown unit")));
    }

    static OptionalInt find(Connection connection, FarmId farm, Channel channel) throws SQLException {
        try (var select = connection.prepareStatement("""
                select channel
                from reading_channel
                where farm = ? and place = ? and machine = ? and sensor = ? and quantity = ? and unit = ?
                """)) {
            set(select, farm, channel);
            try (var rows = select.executeQuery()) {
                return rows.next() ? OptionalInt.of(rows.getInt(1)) : OptionalInt.empty();
            }
        }
    }

    static int findOrAdd(Connection connection, FarmId farm, Channel channel) throws SQLException {
        var known = find(connection, farm, channel);
        if (known.isPresent()) {
            return known.getAsInt();
        }
        try (var insert = connection.prepareStatement("""
                insert into reading_channel (farm, place, machine, sensor, quantity, unit, channel)
                values (?, ?, ?, ?, ?, ?, (select coalesce(max(channel), 0) + 1 from reading_channel where farm = ?1))
                returning channel
                """)) {
            set(insert, farm, channel);
            try (var rows = insert.executeQuery()) {
                rows.next();
                return rows.getInt(1);
            }
        }
    }

    /** Sets the first six values: farm, and the five of {@link #channel}. */
    static void set(PreparedStatement statement, FarmId farm, Channel channel) throws SQLException {
        statement.setString(1, farm.text());
        switch (channel.place()) {
            case ReadingPlace.InMachine(var machine) -> {
                statement.setString(2, MACHINE);
                statement.setString(3, machine.text());
            }
            case ReadingPlace.EggRoom() -> {
                statement.setString(2, EGG_ROOM);
                statement.setString(3, "");
            }
            case ReadingPlace.Brooder() -> {
                statement.setString(2, BROODER);
                statement.setString(3, "");
            }
        }
        statement.setString(4, channel.sensor().text());
        statement.setString(5, channel.quantity().word());
        statement.setString(6, channel.unit().suffix());
    }

    private static ReadingPlace place(String place, String machine) throws SQLException {
        return switch (place) {
            case MACHINE -> new ReadingPlace.InMachine(new MachineName(machine));
            case EGG_ROOM -> new ReadingPlace.EggRoom();
            case BROODER -> new ReadingPlace.Brooder();
            default -> throw new SQLException("unknown place of a sensor");
        };
    }
}
