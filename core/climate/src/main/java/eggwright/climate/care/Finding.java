package eggwright.climate.care;

import eggwright.climate.reading.SensorName;
import eggwright.climate.sensor.Drift;
import eggwright.climate.sensor.Stuck;

/** Why to look at a sensor. */
public sealed interface Finding {
    /** It says the same for too long. */
    record Stays(Stuck how) implements Finding {}

    /**
     * It and another of the same quantity in the same place do not agree. Which of them is right is not told.
     *
     * @param how this sensor less the twin
     */
    record FromTwin(SensorName twin, Drift how) implements Finding {}

    /**
     * It and what is read by hand do not agree.
     *
     * @param how this sensor less what was read by hand
     */
    record FromHand(Drift how) implements Finding {}
}
