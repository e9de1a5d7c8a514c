package eggwright.trade;

import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.util.List;
import java.util.stream.Collectors;

/** A value of a species profile, with its kind of quantity. */
public sealed interface FieldValue {
    /** The form that {@link ProfileField#read} takes. */
    String text();

    /** Days since the eggs went into the heat, or a length in days. Range: 0 to 100. */
    record Days(double days) implements FieldValue {
        public Days {
            OutOfRange.check("Days", days, 0, 100, "d");
        }

        @Override
        public String text() {
            return plain(days);
        }
    }

    record DaysRange(Range<Double> days) implements FieldValue {
        public DaysRange {
            OutOfRange.check("Days", days.low(), 0, days.high(), "d");
            OutOfRange.check("Days", days.high(), days.low(), 100, "d");
        }

        @Override
        public String text() {
            return plain(days.low()) + "-" + plain(days.high());
        }
    }

    /** Whole days, rising. */
    record DayList(List<Integer> days) implements FieldValue {
        public DayList {
            days = days.stream().distinct().sorted().toList();
            for (var day : days) {
                OutOfRange.check("Day", day, 0, 100, "d");
            }
        }

        @Override
        public String text() {
            return days.stream().map(String::valueOf).collect(Collectors.joining(";"));
        }
    }

    record Degrees(Temperature temperature) implements FieldValue {
        @Override
        public String text() {
            return temperature.toString();
        }
    }

    record DegreesRange(Range<Temperature> temperatures) implements FieldValue {
        public DegreesRange {
            OutOfRange.check(
                    "Temperature",
                    temperatures.low().celsius(),
                    -Temperature.ZERO_CELSIUS_KELVIN,
                    temperatures.high().celsius(),
                    "°C");
        }

        @Override
        public String text() {
            return temperatures.low() + "-" + temperatures.high();
        }
    }

    record HumidityRange(Range<Humidity> humidity) implements FieldValue {
        public HumidityRange {
            OutOfRange.check(
                    "Humidity", humidity.low().pct(), 0, humidity.high().pct(), "%");
        }

        @Override
        public String text() {
            return plain(humidity.low().pct()) + "-" + plain(humidity.high().pct()) + "%";
        }
    }

    record Weight(Mass mass) implements FieldValue {
        @Override
        public String text() {
            return mass.toString();
        }
    }

    record WeightRange(Range<Mass> masses) implements FieldValue {
        public WeightRange {
            OutOfRange.check("Mass", masses.low().grams(), 0, masses.high().grams(), "g");
        }

        @Override
        public String text() {
            return masses.low() + "-" + masses.high();
        }
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }
}
