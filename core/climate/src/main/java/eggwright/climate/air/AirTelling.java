package eggwright.climate.air;

import eggwright.book.picture.MachinePicture;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.rollup.Cut;
import eggwright.climate.rollup.Rollup;
import eggwright.climate.rollup.Rollups;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers what is known of a place's air: from its sensors, sifted and corrected, and from what was noted by hand. */
public final class AirTelling {
    private final ReadingStore readings;
    private final SensorCare care;

    public AirTelling(ReadingStore readings, SensorCare care) {
        this.readings = readings;
        this.care = care;
    }

    /** @param noted the machine as the book has it; empty for the egg room, the brooder, and machines the book does not know */
    public AirTold of(ReadingPlace place, Optional<MachinePicture> noted, Instant from, Instant to) {
        var temperatures = new ArrayList<Rollup>();
        var humidities = new ArrayList<Rollup>();
        var wetBulbs = new ArrayList<Rollup>();
        for (var channel : readings.channels()) {
            if (channel.place().equals(place)) {
                switch (channel.quantity()) {
                    case AIR_TEMPERATURE -> temperatures.addAll(hours(channel, from, to));
                    case HUMIDITY -> humidities.addAll(hours(channel, from, to));
                    case WET_BULB -> wetBulbs.addAll(hours(channel, from, to));
                    // Of one egg, and of the barometer: not this room's air.
                    case EGG_TEMPERATURE, PRESSURE -> {}
                }
            }
        }
        return new AirTold(
                temperatures, humidities, wetBulbs, noted.map(AirTelling::notes).orElse(List.of()));
    }

    /** Air temperatures of the sensor that read most often, rolled up; empty where there is none. */
    public List<Rollup> temperatures(ReadingPlace place, Instant from, Instant to, Cut cut) {
        List<Rollup> most = List.of();
        for (var channel : readings.channels()) {
            if (channel.place().equals(place) && channel.quantity() == Quantity.AIR_TEMPERATURE) {
                var rollups = rollups(channel, from, to, cut);
                most = rollups.size() > most.size() ? rollups : most;
            }
        }
        return most;
    }

    /** Air temperatures of each sensor of a place by itself; of those that read nothing, none. */
    public List<List<Rollup>> temperaturesOfEach(ReadingPlace place, Instant from, Instant to, Cut cut) {
        return readings.channels().stream()
                .filter(channel -> channel.place().equals(place) && channel.quantity() == Quantity.AIR_TEMPERATURE)
                .map(channel -> rollups(channel, from, to, cut))
                .filter(rollups -> !rollups.isEmpty())
                .toList();
    }

    /** Places whose air temperature was read at an instant or later. */
    public List<ReadingPlace> readSince(Instant from) {
        return readings.channels().stream()
                .filter(channel -> channel.quantity() == Quantity.AIR_TEMPERATURE)
                .filter(channel -> readings.extent(channel)
                        .filter(extent -> !extent.last().isBefore(from))
                        .isPresent())
                .map(Channel::place)
                .distinct()
                .toList();
    }

    private List<Rollup> hours(Channel channel, Instant from, Instant to) {
        return rollups(channel, from, to, Cut.HOUR);
    }

    private List<Rollup> rollups(Channel channel, Instant from, Instant to, Cut cut) {
        var sifted = care.sifted(readings, channel, from, to);
        return Rollups.of(channel, sifted.good(), care.corrections(channel), cut, null);
    }

    /** What was read by hand at a machine, in time order. */
    public static List<HandRead> notes(MachinePicture machine) {
        return machine.climate().stream()
                .map(read -> new HandRead(
                        read.at().toInstant(),
                        read.what().dry(),
                        read.what().wet(),
                        read.what().humidity()))
                .filter(read -> read.dry() != null || read.wet() != null || read.humidity() != null)
                .toList();
    }

    /** Whether anything but notes by hand can tell of a place. */
    public boolean hasSensor(ReadingPlace place) {
        return readings.channels().stream().anyMatch(c -> c.place().equals(place) && c.quantity() != Quantity.PRESSURE);
    }
}
