package eggwright.sheet.logger;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.ReadingStore.Taken;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.ReadingsGathered;
import java.util.LinkedHashMap;
import java.util.Map;

/** A load that keeps what came in the memory of a test. */
final class Shelf implements ReadingStore.Load {
    private final Map<Channel, ReadingsGathered> gathered = new LinkedHashMap<>();

    @Override
    public void add(Channel channel, long atMillis, double value) {
        gathered.computeIfAbsent(channel, c -> new ReadingsGathered()).add(atMillis, value);
    }

    @Override
    public Taken keep() {
        return Taken.NOTHING;
    }

    @Override
    public void close() {}

    Map<Channel, Readings> all() {
        var all = new LinkedHashMap<Channel, Readings>();
        gathered.forEach((channel, one) -> all.put(channel, one.take()));
        return all;
    }
}
