package eggwright.desk.note;

import eggwright.units.Temperature;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Reads thermometers as a keeper types them, and asks where the number is of the other scale: 99.5 with a C behind it, 37.5 with
 * an F. What was meant can be kept in either case, by writing it in the scale that is asked for.
 */
final class Thermometers {
    /** No machine is hotter, and no table of moist air goes further. */
    private static final double HOTTEST_CELSIUS = 60;
    /** A number that is a usual Fahrenheit reading of a machine, or of a room, with a C behind it. */
    private static final double MOST_FAHRENHEIT = 115;
    /** A number that is a usual Celsius reading of a machine, with an F behind it. */
    private static final double LEAST_LIKE_CELSIUS = 25;

    private static final double MOST_LIKE_CELSIUS = 45;

    private Thermometers() {}

    /** Absent where nothing was typed, or where something is to be mended. */
    static @Nullable Temperature read(FormReader r, String name) {
        var read = r.measureOrNone(name, Temperature::parse);
        if (read == null) {
            return null;
        }
        if (read.celsius() > HOTTEST_CELSIUS) {
            if (read.scale() == Temperature.Scale.CELSIUS && read.number() <= MOST_FAHRENHEIT) {
                r.mend(name, "slip.fahrenheit", r.text(name), plain(read.number()) + "F");
            } else {
                r.mend(name, "slip.tooHot", r.text(name));
            }
            return null;
        }
        if (read.scale() == Temperature.Scale.FAHRENHEIT
                && read.number() >= LEAST_LIKE_CELSIUS
                && read.number() <= MOST_LIKE_CELSIUS) {
            r.mend(
                    name,
                    "slip.celsius",
                    r.text(name),
                    plain(Math.round(read.celsius() * 10) / 10.0) + "C",
                    plain(read.number()) + "C");
            return null;
        }
        return read;
    }

    /** Water that evaporates cools: a wet bulb is never above the dry one. */
    static void wetBelowDry(FormReader r, @Nullable Temperature dry, @Nullable Temperature wet) {
        if (dry != null && wet != null && wet.celsius() > dry.celsius()) {
            r.mend("wet", "slip.wetAboveDry", r.text("wet"), r.text("dry"));
        }
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.format(Locale.ROOT, "%.0f", number) : Double.toString(number);
    }
}
