package eggwright.egg.air;

import eggwright.units.Humidity;
import eggwright.units.Temperature;

/**
 * Whether dew falls on an egg that is brought into other air: it does where the shell is colder than the air's dew point.
 * Wet shells let germs in, so eggs are never set, stacked or fumigated while they sweat (UC poultry fact sheet 22; US
 * Code of Federal Regulations 9 part 147). What to do: let the egg warm, in dry moving air, to {@link #safeEgg} before it
 * meets this air, or dry the air below {@link #safeHumidity}. Wiping does not help.
 */
public sealed interface Sweating {
    /** The egg stays dry. */
    record StaysDry(double marginDegrees, Humidity safeHumidity, Temperature safeEgg) implements Sweating {}

    /** Dew falls on the egg. */
    record Sweats(double shortDegrees, Humidity safeHumidity, Temperature safeEgg) implements Sweating {}

    /** The wettest that air of this temperature may be without dew on this egg. */
    Humidity safeHumidity();

    /** The coldest that an egg may be without dew from this air: the dew point. */
    Temperature safeEgg();

    /**
     * What befalls an egg in this air.
     *
     * @param egg temperature of its shell, 0 to 60 °C
     */
    static Sweating of(Temperature egg, MoistAir air) {
        double most = Saturation.over(egg).kilopascals() / air.saturation().kilopascals();
        var safeHumidity = new Humidity(Math.min(100, 100 * most));
        // Air too dry to have a dew point above -50 °C wets nothing.
        var safeEgg = air.dewPoint().orElse(Temperature.ofCelsius(Saturation.COLDEST_CELSIUS));
        double margin = egg.celsius() - safeEgg.celsius();
        return margin >= 0 ? new StaysDry(margin, safeHumidity, safeEgg) : new Sweats(-margin, safeHumidity, safeEgg);
    }
}
