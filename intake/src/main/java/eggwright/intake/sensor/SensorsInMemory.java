package eggwright.intake.sensor;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Keeps sensors as long as the desk is open; for a desk that is thrown away afterwards, and for tests. */
public final class SensorsInMemory implements SensorBook {
    private final Map<String, Sensor> sensors = new HashMap<>();

    @Override
    public synchronized List<Sensor> all() {
        return sensors.values().stream()
                .sorted(Comparator.comparing(Sensor::added).thenComparing(Sensor::id))
                .toList();
    }

    @Override
    public synchronized void keep(Sensor sensor) {
        sensors.put(sensor.id(), sensor);
    }
}
