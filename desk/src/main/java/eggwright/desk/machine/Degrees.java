package eggwright.desk.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.MachinePicture;
import eggwright.book.picture.Picture;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingUnit;
import eggwright.units.Temperature;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Temperatures as this farm reads them, Fahrenheit or Celsius, to a tenth of a degree. */
record Degrees(Temperature.Scale scale, Locale language) {
    private static final String SPACE = "\u00a0";

    /**
     * In the unit that the keeper noted last, at this machine before others; else in that of a sensor; else Celsius.
     */
    static Degrees of(Picture picture, Optional<MachineName> here, List<Channel> channels, Locale language) {
        var noted = here.flatMap(picture::machine)
                .flatMap(m -> last(List.of(m)))
                .or(() -> last(picture.machines().values()));
        boolean hasFahrenheit = channels.stream().anyMatch(c -> c.unit() == ReadingUnit.FAHRENHEIT);
        var fallback = hasFahrenheit ? Temperature.Scale.FAHRENHEIT : Temperature.Scale.CELSIUS;
        return new Degrees(noted.orElse(fallback), language);
    }

    private static Optional<Temperature.Scale> last(Collection<MachinePicture> machines) {
        return machines.stream()
                .flatMap(m -> m.climate().stream())
                .filter(read -> read.what().dry() != null || read.what().wet() != null)
                .max((a, b) -> a.at().toInstant().compareTo(b.at().toInstant()))
                .flatMap(read -> Stream.of(
                                Optional.ofNullable(read.what().dry()),
                                Optional.ofNullable(read.what().wet()))
                        .flatMap(Optional::stream)
                        .findFirst())
                .map(t -> t.scale() == Temperature.Scale.FAHRENHEIT ? t.scale() : Temperature.Scale.CELSIUS);
    }

    /** With its unit, as {@code 99.5 °F}. */
    String say(Temperature temperature) {
        return say(temperature.celsius());
    }

    /** The same of degrees Celsius. */
    String say(double celsius) {
        return number(of(celsius)) + SPACE + sign();
    }

    /** Degrees Celsius in this scale. */
    double of(double celsius) {
        var temperature = Temperature.ofCelsius(celsius);
        return scale == Temperature.Scale.FAHRENHEIT ? temperature.fahrenheit() : temperature.celsius();
    }

    /** Degrees of this scale in Celsius. */
    Temperature back(double degrees) {
        return new Temperature(degrees, scale);
    }

    boolean isFahrenheit() {
        return scale == Temperature.Scale.FAHRENHEIT;
    }

    String sign() {
        return "°" + scale.letter();
    }

    /** A number to a tenth. */
    String number(double value) {
        return String.format(language, "%.1f", value);
    }
}
