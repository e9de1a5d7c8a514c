package eggwright.climate.machine;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.Readings;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Readings in the memory of a test; none to begin with. */
final class NoReadings implements ReadingStore {
    private final Map<Channel, Readings> kept = new LinkedHashMap<>();

    @Override
    public List<Channel> channels() {
        return List.copyOf(kept.keySet());
    }

    @Override
    public Readings between(Channel channel, Instant from, Instant to) {
        return kept.getOrDefault(channel, Readings.NONE).between(from.toEpochMilli(), to.toEpochMilli());
    }

    @Override
    public Optional<Extent> extent(Channel channel) {
        var all = kept.getOrDefault(channel, Readings.NONE);
        return all.isEmpty() ? Optional.empty() : Optional.of(new Extent(all.at(0), all.at(all.count() - 1)));
    }

    @Override
    public Taken take(Channel channel, Readings readings) {
        int before = kept.getOrDefault(channel, Readings.NONE).count();
        var joined = kept.getOrDefault(channel, Readings.NONE).and(readings);
        kept.put(channel, joined);
        int fresh = joined.count() - before;
        return new Taken(fresh, readings.count() - fresh);
    }

    @Override
    public Load load() {
        throw new IllegalStateException("No test loads here");
    }

    @Override
    public void close() {}
}
