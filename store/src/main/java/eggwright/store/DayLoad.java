package eggwright.store;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.DayCodec;
import eggwright.climate.reading.ReadingStore.Load;
import eggwright.climate.reading.ReadingStore.Taken;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.ReadingsGathered;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A large load on its way in. Only the day that a channel is at is held open; days left behind wait as the bytes that they
 * will be kept as, some three a reading. Nothing is written before {@link #keep}, so that nobody waits meanwhile.
 */
final class DayLoad implements Load {
    private final SqliteReadingStore store;
    private final Map<Channel, Line> lines = new LinkedHashMap<>();
    private final @Nullable Line[] lately = new Line[4];
    private int turn;

    DayLoad(SqliteReadingStore store) {
        this.store = store;
    }

    /** The readings of one day. */
    record Day(long day, Readings readings) {}

    @Override
    public void add(Channel channel, long atMillis, double value) {
        line(channel).add(atMillis, value);
    }

    /** Rows have the same few channels again and again, mostly the very same objects, so that the last ones are at hand. */
    @SuppressWarnings("ReferenceEquality")
    private Line line(Channel channel) {
        for (var near : lately) {
            if (near != null && near.channel == channel) {
                return near;
            }
        }
        var line = lines.computeIfAbsent(channel, Line::new);
        lately[turn] = line;
        turn = (turn + 1) % lately.length;
        return line;
    }

    Collection<Channel> channels() {
        return lines.keySet();
    }

    /** One after the other, so that only one day lies open. */
    Iterable<Day> days(Channel channel) {
        var line = lines.get(channel);
        return line == null ? List.of() : line.days();
    }

    @Override
    public Taken keep() {
        var taken = store.keep(this);
        close();
        return taken;
    }

    @Override
    public void close() {
        lines.clear();
        Arrays.fill(lately, null);
    }

    /** One channel. */
    private static final class Line {
        private final Channel channel;
        private final Map<Long, List<byte[]>> left = new TreeMap<>();
        private final ReadingsGathered open = new ReadingsGathered();
        private long day = Long.MIN_VALUE;

        Line(Channel channel) {
            this.channel = channel;
        }

        void add(long atMillis, double value) {
            long of = DayCodec.dayOf(atMillis);
            if (of != day) {
                leave();
                day = of;
            }
            open.add(atMillis, value);
        }

        private void leave() {
            if (open.count() > 0) {
                left.computeIfAbsent(day, d -> new ArrayList<>(1)).add(DayCodec.write(day, open.take()));
            }
        }

        Iterable<Day> days() {
            leave();
            return () -> left.entrySet().stream()
                    .map(day -> new Day(day.getKey(), joined(day.getKey(), day.getValue())))
                    .iterator();
        }

        private static Readings joined(long day, List<byte[]> parts) {
            var readings = Readings.NONE;
            for (var part : parts) {
                readings = readings.and(DayCodec.read(day, part));
            }
            return readings;
        }
    }
}
