package eggwright.climate.sensor;

import eggwright.climate.reading.Quantity;

/**
 * How far instruments may be off and still be in order, and when two of them disagree.
 *
 * <p>Two results disagree where their difference is more than the root of the sum of the squares of what each may be off by: the
 * E<sub>n</sub> score above 1 of ISO 13528 (read in the NIST Dataplot manual, "ISO 13528 EN SCORE").
 *
 * @param sensor of a sensor as farms buy them, in °C, percent or hPa
 * @param byHand of what a keeper reads it with
 */
public record Accuracy(double sensor, double byHand) {
    /**
     * As published. Temperature: ±0.5 °C from -10 to 85 °C (Maxim Integrated, DS18B20 data sheet, seen). Humidity: ±3 % (Sensirion, SHT3x data
     * sheet, November 2014, SHT30, seen). Pressure: ±1 hPa (from memory). By hand: a glass thermometer to half a degree Celsius, a dial
     * hygrometer or a wet and dry bulb to five points (common practice, no source).
     */
    public static Accuracy of(Quantity quantity) {
        return switch (quantity) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> new Accuracy(0.5, 0.5);
            case HUMIDITY -> new Accuracy(3, 5);
            case PRESSURE -> new Accuracy(1, 1);
        };
    }

    /** By how much two sensors in the same air may differ. */
    public double betweenTwins() {
        return Math.hypot(sensor, sensor);
    }

    /** By how much a sensor and a reading by hand may differ. */
    public double fromHand() {
        return Math.hypot(sensor, byHand);
    }
}
