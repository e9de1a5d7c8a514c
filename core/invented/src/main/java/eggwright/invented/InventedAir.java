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
    private static final String DRIFTING = "probe by the door";
    private static final double DRIFT_A_DAY = 0.045;
    /** What the logger writes of a loose plug is its own. */
    private static final double NO_LOOSE_PLUG = 150;

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
        void read(String machine, String sensor, long atMillis, double fahrenheit);
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
     * A second thermometer beside the logger: it writes every ten minutes, and reads lower by {@value #DRIFT_A_DAY} °F more each day.
     */
    public static void writeDrifting(MachineTruth machine, long seed, Instant from, Instant until, Probe probe) {
        long first = from.toEpochMilli();
        write(machine, seed, from, until, (name, at, fahrenheit, humidity) -> {
            if (at % (10 * MINUTE) == 0 && fahrenheit < NO_LOOSE_PLUG) {
                double days = (at - first) / (MINUTE * MINUTES_PER_DAY);
                probe.read(name, DRIFTING, at, tenth(fahrenheit - DRIFT_A_DAY * days));
            }
        });
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
