package eggwright.intake;

import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.SensorName;
import eggwright.intake.message.Intake;
import eggwright.intake.sensor.Sensors;
import eggwright.intake.sensor.SensorsInMemory;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.SplittableRandom;

/** A sensor on the second shelf of the setter, which tells degrees Fahrenheit, and all that stands behind it. */
public final class Shelf2 {
    public static final Instant NOON = Instant.parse("2027-05-12T17:00:00Z");
    public static final Channel CHANNEL = channel(Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT);

    /** A clock that is set forward by hand. */
    public static final class SetClock implements InstantSource {
        private volatile Instant now = NOON;

        @Override
        public Instant instant() {
            return now;
        }

        public void forward(Duration by) {
            now = now.plus(by);
        }
    }

    public final SetClock clock = new SetClock();
    public final SensorsInMemory book = new SensorsInMemory();
    public final Sensors sensors = new Sensors(book, clock, new SplittableRandom(7));
    public final MemoryReadings readings = new MemoryReadings();
    public final Intake intake = new Intake(sensors, readings, clock);
    public final Sensors.Added.In added = (Sensors.Added.In) sensors.add(CHANNEL);

    public String token() {
        return added.token();
    }

    public static Channel channel(Quantity quantity, ReadingUnit unit) {
        return new Channel(
                new ReadingPlace.InMachine(new MachineName("Setter")), new SensorName("Shelf 2"), quantity, unit);
    }
}
