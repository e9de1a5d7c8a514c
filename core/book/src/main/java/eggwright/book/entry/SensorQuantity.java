package eggwright.book.entry;

import eggwright.units.Amount;
import java.util.Locale;

/** What a sensor measures. */
public enum SensorQuantity {
    AIR_TEMPERATURE,
    WET_BULB,
    EGG_TEMPERATURE,
    HUMIDITY,
    PRESSURE;

    /** Twenty degrees, sixty percent: ours. Wider is a broken sensor, or degrees of the other scale. */
    private static final Amount MOST_DEGREES = new Amount(20, Amount.Unit.CELSIUS);

    private static final Amount MOST_PERCENT = new Amount(60, Amount.Unit.PERCENT);
    private static final Amount MOST_HECTOPASCAL = new Amount(100, Amount.Unit.HECTOPASCAL);

    /** As written in files and addresses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it is measured in such a unit. */
    public boolean isMeasuredIn(Amount.Unit unit) {
        return switch (this) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE ->
                unit == Amount.Unit.CELSIUS || unit == Amount.Unit.FAHRENHEIT;
            case HUMIDITY -> unit == Amount.Unit.PERCENT;
            case PRESSURE ->
                switch (unit) {
                    case HECTOPASCAL, MILLIBAR, KILOPASCAL, INCH_OF_MERCURY -> true;
                    case CELSIUS, FAHRENHEIT, PERCENT -> false;
                };
        };
    }

    /** The most that a sensor that works is ever corrected by. */
    Amount mostCorrection() {
        return switch (this) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> MOST_DEGREES;
            case HUMIDITY -> MOST_PERCENT;
            case PRESSURE -> MOST_HECTOPASCAL;
        };
    }
}
