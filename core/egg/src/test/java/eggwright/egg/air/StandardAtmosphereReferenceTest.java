package eggwright.egg.air;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.egg.Published;
import eggwright.units.Altitude;
import eggwright.units.Pressure;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StandardAtmosphereReferenceTest {
    /** Asked for, and kept by every row but those of the table in inches. */
    private static final double SHARE = 1e-4;

    /** ASHRAE's table in inches of mercury is printed to 0.01 inHg or less; some entries carry known rounding. */
    private static final double SHARE_OF_INCHES = 3e-4;

    /** Printed to 0.1 °C, some rows after a rounding to 0.1 °F. */
    private static final double DEGREES = 0.08;

    static Stream<Published> rows() {
        return Stream.concat(
                Published.rows("standard_atmosphere", "published"), Published.rows("standard_atmosphere", "computed"));
    }

    static Stream<Published> factors() {
        return Published.rows("standard_atmosphere", "published_factor");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void atmosphere_agreesWithIso2533(Published row) {
        double metres = row.number("altitude_m");
        var air = row.text("altitude_type").equals("geometric")
                ? StandardAtmosphere.at(Altitude.ofMetres(metres))
                : StandardAtmosphere.atGeopotentialMetres(metres);
        double printed = row.number("pressure_hPa");
        double share = row.number("tolerance_pressure_hPa") > 0.1 ? SHARE_OF_INCHES : SHARE;
        assertEquals(printed, air.pressure().hectopascals(), share * printed, row.id());
        if (!row.text("temperature_C").isEmpty()) {
            assertEquals(row.number("temperature_C"), air.temperature().celsius(), DEGREES, row.id());
        }
    }

    /** Printed to two decimals: 1.13, 1.20, 1.27 and 1.45 times the loss at sea level (Tullett 2013, read). */
    @ParameterizedTest
    @MethodSource("factors")
    void atmosphere_givesTheTradesFactorForAltitude(Published row) {
        var air = StandardAtmosphere.at(Altitude.ofMetres(row.number("altitude_m")));
        assertEquals(
                row.number("conductance_factor_P0_over_P"),
                Pressure.SEA_LEVEL.kilopascals() / air.pressure().kilopascals(),
                0.0051,
                row.id());
    }

    @Test
    void atmosphere_isThatOfTheSea_atNoHeight() {
        var sea = StandardAtmosphere.at(Altitude.parse("0ft"));
        assertEquals(101.325, sea.pressure().kilopascals(), 1e-12);
        assertEquals(15, sea.temperature().celsius(), 1e-12);
    }
}
