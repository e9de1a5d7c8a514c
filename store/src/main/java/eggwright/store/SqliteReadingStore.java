package eggwright.store;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.DayCodec;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.Readings;
import eggwright.store.StoreFault.Why;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Readings in the farm's file, a day of a channel in each row. Lives as long as the book that it was asked from, which
 * also closes it. Safe for many threads.
 */
public final class SqliteReadingStore implements ReadingStore {
    /** The first version of a farm's file that has tables for readings. */
    private static final int SINCE = 3;

    private final SqliteEntryStore store;

    SqliteReadingStore(SqliteEntryStore store) {
        this.store = store;
    }

    @Override
    public List<Channel> channels() {
        return store.ask(
                connection -> hasTables(connection) ? ChannelRows.all(connection, store.farm()) : List.<Channel>of());
    }

    @Override
    public Readings between(Channel channel, Instant from, Instant to) {
        return store.ask(connection -> {
            if (!hasTables(connection)) {
                return Readings.NONE;
            }
            var number = ChannelRows.find(connection, store.farm(), channel);
            return number.isEmpty()
                    ? Readings.NONE
                    : DayRows.between(
                            connection, store.farm(), number.getAsInt(), from.toEpochMilli(), to.toEpochMilli());
        });
    }

    @Override
    public Optional<Extent> extent(Channel channel) {
        return store.ask(connection -> {
            if (!hasTables(connection)) {
                return Optional.<Extent>empty();
            }
            var number = ChannelRows.find(connection, store.farm(), channel);
            return number.isEmpty()
                    ? Optional.<Extent>empty()
                    : DayRows.extent(connection, store.farm(), number.getAsInt());
        });
    }

    /** What of the readings is not whole, in words. */
    List<String> faults() {
        return store.ask(
                connection -> hasTables(connection) ? DayRows.faults(connection, store.farm()) : List.<String>of());
    }

    private static boolean hasTables(Connection connection) throws SQLException {
        return Migrations.has(connection, SINCE);
    }

    @Override
    public Taken take(Channel channel, Readings readings) {
        return inOneGo(connection -> {
            var taken = Taken.NOTHING;
            if (readings.isEmpty()) {
                return taken;
            }
            int number = ChannelRows.findOrAdd(connection, store.farm(), channel);
            for (int i = 0; i < readings.count(); ) {
                long day = DayCodec.dayOf(readings.millis(i));
                var ofDay = readings.between(day * DayCodec.DAY_MILLIS, (day + 1) * DayCodec.DAY_MILLIS);
                taken = taken.plus(DayRows.join(connection, store.farm(), number, day, ofDay));
                i += ofDay.count();
            }
            return taken;
        });
    }

    @Override
    public Load load() {
        return new DayLoad(this);
    }

    /** Writes what a load gathered, all in one transaction. */
    Taken keep(DayLoad load) {
        return inOneGo(connection -> {
            var taken = Taken.NOTHING;
            for (var channel : load.channels()) {
                int number = ChannelRows.findOrAdd(connection, store.farm(), channel);
                for (var day : load.days(channel)) {
                    taken = taken.plus(DayRows.join(connection, store.farm(), number, day.day(), day.readings()));
                }
            }
            return taken;
        });
    }

    private Taken inOneGo(Work work) {
        try {
            return store.writer().inOneGo((connection, entries) -> Writer.Done.keep(work.on(connection)));
        } catch (SQLException fault) {
            throw new StoreFault(
                    Why.NOT_WRITABLE,
                    "The readings were not saved: " + Reasons.of(fault)
                            + ". What was kept before is unharmed. Make room, then bring them again.",
                    fault);
        }
    }

    private interface Work {
        Taken on(Connection connection) throws SQLException;
    }

    /** Nothing of its own to close. */
    @Override
    public void close() {}
}
