package eggwright.book.fold;

import eggwright.book.entry.ReadingsReleased;
import eggwright.book.entry.SensorAt;
import eggwright.book.entry.SensorCompared;
import eggwright.book.entry.SensorTrustChanged;
import eggwright.book.picture.SensorPicture;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Folds what was said of one sensor. */
final class SensorFold implements PartFold<SensorPicture> {
    private final SensorAt sensor;
    private final List<SensorPicture.Compared> compared = new ArrayList<>();
    private final List<SensorPicture.Trusted> trusted = new ArrayList<>();
    private final List<SensorPicture.Released> released = new ArrayList<>();

    SensorFold(SensorAt sensor) {
        this.sensor = sensor;
    }

    @Override
    public Folded<SensorPicture> folded() {
        return new Folded<>(new SensorPicture(sensor, compared, trusted, released), List.of());
    }

    @Override
    public void take(Effective entry) {
        switch (entry.payload()) {
            case SensorCompared it ->
                compared.add(
                        new SensorPicture.Compared(entry.id(), Objects.requireNonNullElse(it.from(), entry.at()), it));
            case SensorTrustChanged it ->
                trusted.add(
                        new SensorPicture.Trusted(entry.id(), Objects.requireNonNullElse(it.from(), entry.at()), it));
            case ReadingsReleased it -> released.add(new SensorPicture.Released(entry.id(), it));
            default -> {
                // No other kind speaks of a sensor.
            }
        }
    }
}
