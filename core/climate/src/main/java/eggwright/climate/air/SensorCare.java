package eggwright.climate.air;

import eggwright.climate.reading.Channel;
import eggwright.climate.sensor.Corrections;
import eggwright.climate.sensor.Released;
import java.util.List;

/** What people said of the sensors: by how much each is off, and which odd readings were true after all. */
public interface SensorCare {
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
    };

    Corrections corrections(Channel channel);

    List<Released> released(Channel channel);
}
