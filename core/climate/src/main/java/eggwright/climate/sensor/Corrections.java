package eggwright.climate.sensor;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The calibrations of one channel. Before the first nothing is added. */
public record Corrections(List<Calibration> inOrder) {
    public static final Corrections NONE = new Corrections(List.of());

    public Corrections {
        inOrder =
                inOrder.stream().sorted(Comparator.comparing(Calibration::from)).toList();
    }

    /** The one that holds at an instant; empty before the first. */
    public Optional<Calibration> holding(Instant instant) {
        return inOrder.stream().filter(c -> !c.from().isAfter(instant)).reduce((before, after) -> after);
    }

    /** What is added at an instant, in standard units. */
    public double at(Instant instant) {
        return at(instant.toEpochMilli());
    }

    /** The same by milliseconds since 1970. */
    public double at(long millis) {
        double offset = 0;
        for (var calibration : inOrder) {
            if (calibration.from().toEpochMilli() > millis) {
                break;
            }
            offset = calibration.offset();
        }
        return offset;
    }
}
