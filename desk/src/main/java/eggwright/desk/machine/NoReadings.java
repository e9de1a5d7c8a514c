package eggwright.desk.machine;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.Readings;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Of a farm without sensors: nothing was ever read, and there is nowhere to keep a reading. */
public final class NoReadings implements ReadingStore {
    @Override
    public List<Channel> channels() {
        return List.of();
    }

    @Override
    public Readings between(Channel channel, Instant from, Instant to) {
        return Readings.NONE;
    }

    @Override
    public Optional<Extent> extent(Channel channel) {
        return Optional.empty();
    }

    @Override
    public Taken take(Channel channel, Readings readings) {
        throw nowhere();
    }

    @Override
    public Load load() {
        throw nowhere();
    }

    private static UnsupportedOperationException nowhere() {
        return new UnsupportedOperationException("This desk was opened without a place for readings");
    }

    /** Nothing is open. */
    @Override
    public void close() {}
}
