package eggwright.intake;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.ReadingsGathered;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Readings that live as long as the test. */
public final class MemoryReadings implements ReadingStore {
    private final Map<Channel, Readings> kept = new LinkedHashMap<>();

    /** Whether nothing can be kept, as on a full disk. */
    public volatile boolean isFull;

    /** Whether nothing can be read, as on a disk that begins to fail. */
    public volatile boolean isUnreadable;

    /** How many readings were ever asked for, of all questions together. */
    public volatile long given;

    @Override
    public synchronized List<Channel> channels() {
        return List.copyOf(kept.keySet());
    }

    @Override
    public synchronized Readings between(Channel channel, Instant from, Instant to) {
        if (isUnreadable) {
            throw new IllegalStateException("The disk does not answer");
        }
        var asked = kept.getOrDefault(channel, Readings.NONE).between(from.toEpochMilli(), to.toEpochMilli());
        given += asked.count();
        return asked;
    }

    @Override
    public synchronized Optional<Extent> extent(Channel channel) {
        return Optional.ofNullable(kept.get(channel))
                .filter(r -> !r.isEmpty())
                .map(r -> new Extent(r.at(0), r.at(r.count() - 1)));
    }

    @Override
    public synchronized Taken take(Channel channel, Readings readings) {
        if (isFull) {
            throw new IllegalStateException("The disk is full");
        }
        var before = kept.getOrDefault(channel, Readings.NONE);
        var after = before.and(readings);
        kept.put(channel, after);
        long fresh = (long) after.count() - before.count();
        return new Taken(fresh, readings.count() - fresh);
    }

    @Override
    public Load load() {
        var gathered = new LinkedHashMap<Channel, ReadingsGathered>();
        return new Load() {
            @Override
            public void add(Channel channel, long atMillis, double value) {
                gathered.computeIfAbsent(channel, c -> new ReadingsGathered()).add(atMillis, value);
            }

            @Override
            public Taken keep() {
                var taken = Taken.NOTHING;
                for (var one : gathered.entrySet()) {
                    taken = taken.plus(take(one.getKey(), one.getValue().take()));
                }
                return taken;
            }

            @Override
            public void close() {
                gathered.clear();
            }
        };
    }

    @Override
    public void close() {}
}
