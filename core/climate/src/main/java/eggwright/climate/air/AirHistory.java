package eggwright.climate.air;

import eggwright.climate.rollup.Rollup;
import eggwright.egg.air.MoistAir;
import eggwright.units.Humidity;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Puts together what is known of a place's air, hour by hour: sensors first, then what was read by hand in the
 * {@value #HAND_HOURS} hours before or after, else the set-point. Temperature and humidity each go their own way, so that a
 * thermometer without a hygrometer still counts.
 */
public final class AirHistory {
    /** A reading by hand speaks for so long either way: ours; thermometers are read twice a day. */
    public static final int HAND_HOURS = 24;

    private static final long HOUR_MILLIS = 3_600_000L;
    /** Longer than any set is in the machines; of one that was never taken off, only its last days are told. */
    private static final Duration LONGEST = Duration.ofDays(60);

    /** In time order. */
    private final List<HandRead> notes;

    private final SetPoint setPoint;
    private final Surroundings surroundings;
    private final Map<Long, Double> temperatures;
    private final Map<Long, Double> humidities;
    private final Map<Long, Double> wetBulbs;

    private AirHistory(AirTold told, SetPoint setPoint, Surroundings surroundings) {
        this.notes =
                told.notes().stream().sorted(Comparator.comparing(HandRead::at)).toList();
        this.setPoint = setPoint;
        this.surroundings = surroundings;
        this.temperatures = byHour(told.temperatures());
        this.humidities = byHour(told.humidities());
        this.wetBulbs = byHour(told.wetBulbs());
    }

    /**
     * @param told from at least a day before the first instant
     * @return without gaps, from the first instant, or {@link #LONGEST} before the second, to the second
     */
    public static List<AirHour> of(
            AirTold told, SetPoint setPoint, Surroundings surroundings, Instant from, Instant to) {
        var earliest = to.minus(LONGEST);
        return new AirHistory(told, setPoint, surroundings).hours(from.isBefore(earliest) ? earliest : from, to);
    }

    /** The mean of several sensors. */
    private static Map<Long, Double> byHour(List<Rollup> rollups) {
        var sums = new HashMap<Long, double[]>();
        for (var rollup : rollups) {
            var sum =
                    sums.computeIfAbsent(Math.floorDiv(rollup.from().toEpochMilli(), HOUR_MILLIS), h -> new double[2]);
            sum[0] += rollup.mean();
            sum[1]++;
        }
        var means = new HashMap<Long, Double>();
        sums.forEach((hour, sum) -> means.put(hour, sum[0] / sum[1]));
        return means;
    }

    private List<AirHour> hours(Instant from, Instant to) {
        var hours = new ArrayList<AirHour>();
        var at = from;
        while (at.isBefore(to)) {
            long hour = Math.floorDiv(at.toEpochMilli(), HOUR_MILLIS);
            var next = Instant.ofEpochMilli((hour + 1) * HOUR_MILLIS);
            var end = next.isAfter(to) ? to : next;
            hours.add(hour(at, end, hour));
            at = end;
        }
        return hours;
    }

    private AirHour hour(Instant from, Instant to, long hour) {
        var noted = nearest(from);
        var warmth = KnownBy.READINGS;
        var read = Optional.ofNullable(temperatures.get(hour));
        double celsius;
        if (read.isPresent()) {
            celsius = read.get();
        } else if (noted.isPresent() && noted.get().dry() != null) {
            warmth = KnownBy.HAND;
            celsius = noted.get().dry().celsius();
        } else {
            warmth = KnownBy.SET_POINT;
            celsius = setPoint.temperature().celsius();
        }
        return wet(from, to, hour, Temperature.ofCelsius(within(celsius)), warmth, noted);
    }

    private AirHour wet(
            Instant from, Instant to, long hour, Temperature dry, KnownBy warmth, Optional<HandRead> noted) {
        var humidity = Optional.ofNullable(humidities.get(hour));
        if (humidity.isPresent()) {
            var air = MoistAir.of(dry, new Humidity(Math.clamp(humidity.get(), 0, 100)), surroundings.barometer());
            return new AirHour(from, to, air, warmth, KnownBy.READINGS);
        }
        var wet = Optional.ofNullable(wetBulbs.get(hour));
        if (wet.isPresent()) {
            var air = ofWetBulb(dry, Temperature.ofCelsius(wet.get()));
            if (air != null) {
                return new AirHour(from, to, air, warmth, KnownBy.READINGS);
            }
        }
        if (noted.isPresent()) {
            var air = noted(dry, noted.get());
            if (air != null) {
                return new AirHour(from, to, air, warmth, KnownBy.HAND);
            }
        }
        return new AirHour(
                from, to, MoistAir.of(dry, setPoint.humidity(), surroundings.barometer()), warmth, KnownBy.SET_POINT);
    }

    private @Nullable MoistAir noted(Temperature dry, HandRead noted) {
        var humidity = noted.humidity();
        if (humidity != null) {
            return MoistAir.of(dry, humidity, surroundings.barometer());
        }
        var wet = noted.wet();
        var ofTheSameMoment = noted.dry();
        if (wet == null) {
            return null;
        }
        // The pair belongs together; what a sensor says of the temperature is another hour's.
        var air = ofWetBulb(ofTheSameMoment == null ? dry : ofTheSameMoment, wet);
        return air == null ? null : MoistAir.of(dry, air.humidity(), surroundings.barometer());
    }

    /** Absent where the pair cannot be: the wet bulb above the dry one, or too far below. It is told as an odd reading elsewhere. */
    private @Nullable MoistAir ofWetBulb(Temperature dry, Temperature wet) {
        try {
            return MoistAir.ofWetBulb(dry, wet, surroundings.barometer(), surroundings.ventilation());
        } catch (OutOfRange impossible) {
            return null;
        }
    }

    /** By halving, for a season has hundreds of notes and a set hundreds of hours. */
    private Optional<HandRead> nearest(Instant at) {
        long millis = at.toEpochMilli();
        int low = 0;
        int high = notes.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (notes.get(middle).at().toEpochMilli() < millis) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        var nearest = Optional.<HandRead>empty();
        long least = HAND_HOURS * HOUR_MILLIS + 1;
        for (int i = Math.max(0, low - 1); i <= low && i < notes.size(); i++) {
            long away = Math.abs(notes.get(i).at().toEpochMilli() - millis);
            if (away < least) {
                least = away;
                nearest = Optional.of(notes.get(i));
            }
        }
        return nearest;
    }

    private static double within(double celsius) {
        return Math.clamp(celsius, MoistAir.COLDEST_CELSIUS, MoistAir.HOTTEST_CELSIUS);
    }
}
