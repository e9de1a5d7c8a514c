package eggwright.climate.reading;

import eggwright.book.name.MachineName;
import java.time.Instant;
import java.util.SplittableRandom;

/** A thermometer in setter 1 that writes degrees Fahrenheit. */
public final class Logger {
    public static final Instant MONDAY = Instant.parse("2027-04-05T13:00:00Z");
    public static final Channel AIR = new Channel(
            new ReadingPlace.InMachine(new MachineName("Setter 1")),
            SensorName.ONLY,
            Quantity.AIR_TEMPERATURE,
            ReadingUnit.FAHRENHEIT);
    public static final Channel CELSIUS =
            new Channel(AIR.place(), AIR.sensor(), Quantity.AIR_TEMPERATURE, ReadingUnit.CELSIUS);

    private Logger() {}

    /** One reading each so many seconds. */
    public static Readings every(int seconds, double... values) {
        var millis = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            millis[i] = MONDAY.plusSeconds((long) i * seconds).toEpochMilli();
        }
        return Readings.of(millis, values);
    }

    /** Any readings of one day, some of one instant, some twice. */
    static Readings any(SplittableRandom random, long day) {
        int count = random.nextInt(40);
        var millis = new long[count];
        var values = new double[count];
        int decimals = random.nextInt(9);
        for (int i = 0; i < count; i++) {
            millis[i] = day * DayCodec.DAY_MILLIS
                    + (random.nextBoolean() ? random.nextLong(DayCodec.DAY_MILLIS) : 60_000L * random.nextInt(24 * 60));
            double scale = Math.pow(10, decimals);
            values[i] = decimals == 8
                    ? random.nextDouble(-1e300, 1e300)
                    : Math.rint(random.nextDouble(-200, 200) * scale) / scale;
        }
        return Readings.of(millis, values);
    }
}
