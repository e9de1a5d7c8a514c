package eggwright.invented;

import eggwright.book.entry.MachineKind;
import eggwright.invented.truth.MachineTruth;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.SplittableRandom;

/**
 * What a logger in a machine of an invented farm wrote, minute by minute, about what its keeper notes on the rounds. Ten days
 * before the end the power fails for an hour and a half; four days before, its battery is flat for five hours; a day before, its
 * plug was loose for two readings. Nothing of it moves the eggs' fate.
 */
public final class InventedAir {
    private static final long MINUTE = 60_000;
    private static final long CUT_MINUTES = 95;
    private static final long FLAT_MINUTES = 300;
    private static final double ROOM_FAHRENHEIT = 66;
    private static final double ROOM_HUMIDITY = 44;
    /** Air over a mass of eggs cools by a share of its distance from the room each minute, and warms again faster. */
    private static final double COOLING = 1 / 420.0;

    private static final double WARMING = 1 / 55.0;
    private static final double MINUTES_PER_DAY = 1440;
    private static final long TEN_MINUTES = 10 * MINUTE;
    private static final double EGG_ROOM_FAHRENHEIT = 59;
    private static final String STEADY = "shelf";
    private static final String DRIFTING = "by the door";
    private static final double DRIFT_A_DAY = 0.045;

    private final SplittableRandom random;
    private final double heldFahrenheit;
    private final double heldHumidity;

    /** Takes a reading down. */
    @FunctionalInterface
    public interface Logger {
        void read(String machine, long atMillis, double fahrenheit, double humidityPct);
    }

    /** Takes a reading of a thermometer down. */
    @FunctionalInterface
    public interface Probe {
        void read(String sensor, long atMillis, double fahrenheit);
    }

    private InventedAir(MachineTruth machine, long seed) {
        boolean hatches = machine.does() == MachineKind.HATCHER;
        this.random = new SplittableRandom(seed + machine.name().hashCode());
        this.heldFahrenheit = hatches ? 99.0 : 99.6;
        this.heldHumidity = hatches ? 70 : 52;
    }

    /** From one instant on, before another. */
    public static void write(MachineTruth machine, long seed, Instant from, Instant until, Logger logger) {
        new InventedAir(machine, seed).write(machine.name(), from, until, logger);
    }

    /**
     * Two thermometers of an egg room that write every ten minutes. The second agrees with the first when it is hung in, and reads
     * lower by {@value #DRIFT_A_DAY} °F more each day.
     */
    public static void writeEggRoom(long seed, Instant from, Instant until, Probe probe) {
        var random = new SplittableRandom(seed);
        long first = Math.floorDiv(from.toEpochMilli(), TEN_MINUTES) * TEN_MINUTES;
        double waver = 0;
        for (long at = first; at < until.toEpochMilli(); at += TEN_MINUTES) {
            double days = (at - first) / (MINUTE * MINUTES_PER_DAY);
            waver = 0.97 * waver + 0.1 * random.nextGaussian();
            double fahrenheit = EGG_ROOM_FAHRENHEIT + 1.5 * Math.sin(2 * Math.PI * days) + waver;
            probe.read(STEADY, at, tenth(fahrenheit));
            probe.read(DRIFTING, at, tenth(fahrenheit + 0.1 * random.nextGaussian() - DRIFT_A_DAY * days));
        }
    }

    private void write(String machine, Instant from, Instant until, Logger logger) {
        long first = from.truncatedTo(ChronoUnit.MINUTES).toEpochMilli();
        long end = until.toEpochMilli();
        long cut = end - Duration.ofDays(10).toMillis();
        long flat = end - Duration.ofDays(4).toMillis();
        long loose = end - Duration.ofDays(1).toMillis();
        double fahrenheit = heldFahrenheit;
        double humidity = heldHumidity;
        double waver = 0;
        for (long at = first; at < end; at += MINUTE) {
            boolean isCut = at >= cut && at < cut + CUT_MINUTES * MINUTE;
            double day = 2 * Math.PI * (at / (double) MINUTE % MINUTES_PER_DAY) / MINUTES_PER_DAY;
            fahrenheit += isCut
                    ? (ROOM_FAHRENHEIT - fahrenheit) * COOLING
                    : (heldFahrenheit + 0.12 * Math.sin(day) - fahrenheit) * WARMING + 0.02 * random.nextGaussian();
            waver = 0.995 * waver + 0.12 * random.nextGaussian();
            double wanted = isCut ? ROOM_HUMIDITY : heldHumidity + 1.4 * Math.sin(day + 1);
            humidity += (wanted - humidity) / 40;
            if (at < flat || at >= flat + FLAT_MINUTES * MINUTE) {
                boolean isLoose = at >= loose && at < loose + 2 * MINUTE;
                logger.read(machine, at, isLoose ? 185 : tenth(fahrenheit), tenth(humidity + waver));
            }
        }
    }

    private static double tenth(double number) {
        return Math.rint(number * 10) / 10;
    }
}
