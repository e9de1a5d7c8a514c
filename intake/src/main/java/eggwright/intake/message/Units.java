package eggwright.intake.message;

import eggwright.climate.reading.ReadingUnit;
import java.util.Locale;
import java.util.Optional;

/** Units as sensors write them. */
final class Units {
    private Units() {}

    static Optional<ReadingUnit> named(String said) {
        return switch (said.toLowerCase(Locale.ROOT).replace("°", "").strip()) {
            case "c", "celsius" -> Optional.of(ReadingUnit.CELSIUS);
            case "f", "fahrenheit" -> Optional.of(ReadingUnit.FAHRENHEIT);
            case "%", "pct", "%rh" -> Optional.of(ReadingUnit.PERCENT);
            case "hpa", "mbar" -> Optional.of(ReadingUnit.HECTOPASCAL);
            default -> Optional.empty();
        };
    }
}
