package eggwright.climate.air;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.sensor.Aside;
import eggwright.climate.sensor.Corrections;
import eggwright.climate.sensor.Released;
import eggwright.climate.sensor.Sifted;
import eggwright.climate.sensor.Sifting;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** What people said of the sensors: by how much each is off, when not to believe it, and which odd readings were true after all. */
public interface SensorCare {
    /** Long enough for a jump to be believed, or for anything after it to be taken. */
    Duration LEAD = Duration.ofHours(1);

    /** Nothing was ever said. */
    SensorCare NONE = new SensorCare() {
        @Override
        public Corrections corrections(Channel channel) {
            return Corrections.NONE;
        }

        @Override
        public List<Released> released(Channel channel) {
            return List.of();
        }

        @Override
        public List<Aside> aside(Channel channel) {
            return List.of();
        }
    };

    Corrections corrections(Channel channel);

    List<Released> released(Channel channel);

    /** When it was set aside, in time order. */
    List<Aside> aside(Channel channel);

    /**
     * What a channel read from an instant on, before another, told apart. A little before is looked at too, so that a reading is held
     * or let through alike whatever the stretch that is asked for.
     */
    default Sifted sifted(ReadingStore store, Channel channel, Instant from, Instant to) {
        var sifted =
                Sifting.of(channel, store.between(channel, from.minus(LEAD), to), released(channel), aside(channel));
        return new Sifted(
                sifted.good().between(from.toEpochMilli(), to.toEpochMilli()),
                sifted.held().stream().filter(h -> !h.at().isBefore(from)).toList());
    }
}
