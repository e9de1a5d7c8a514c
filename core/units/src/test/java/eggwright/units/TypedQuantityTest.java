package eggwright.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedQuantityTest {
    /** Doubles carry about 16 digits; the conversions are two operations. */
    private static final double ROUNDING = 1e-12;

    /** Pairs from the definition F = 1.8 C + 32; 100 F = 37.8 C is the handbook's own rounded pair. */
    @ParameterizedTest
    @CsvSource({"212F, 100", "32F, 0", "-40F, -40", "99.5F, 37.5", "37.5C, 37.5", "37.5 °C, 37.5", "273.15K, 0"})
    void temperature_readsBothScales(String typed, double celsius) {
        assertEquals(celsius, Temperature.parse(typed).celsius(), ROUNDING);
    }

    @Test
    void temperature_keepsWhatWasTyped() {
        assertEquals("99.5F", Temperature.parse("99.5 F").toString());
        assertEquals(99.5, Temperature.parse("37.5C").fahrenheit(), ROUNDING);
    }

    @ParameterizedTest
    @ValueSource(strings = {"99.5", "warm", "", "99,5F", "99.5R", "-300C"})
    void temperature_isRefused_withoutAUnitOrOutsideTheRange(String typed) {
        assertThrows(OutOfRange.class, () -> Temperature.parse(typed));
    }

    @ParameterizedTest
    @CsvSource({"31.2g, 31.2", "1oz, 28.349523125", "1 lb, 453.59237", "2.4kg, 2400", "1.5E-3kg, 1.5"})
    void mass_readsFarmScales(String typed, double grams) {
        assertEquals(grams, Mass.parse(typed).grams(), ROUNDING);
    }

    @Test
    void mass_saysHowToWriteIt_whenTheUnitIsMissing() {
        var refused = assertThrows(OutOfRange.class, () -> Mass.parse("31.2"));
        assertEquals("\"31.2\" has no unit. Write 31.2g or 1.1oz.", refused.getMessage());
    }

    @Test
    void rate_isNotANumber_whenNothingWasCounted() {
        assertTrue(Double.isNaN(new Rate(0, 0).share()));
        assertThrows(OutOfRange.class, () -> new Rate(5, 4));
        assertEquals(new Rate(7, 12), new Rate(3, 4).plus(new Rate(4, 8)));
    }

    @Test
    void humidity_isRefused_whenNotANumber() {
        assertThrows(OutOfRange.class, () -> new Humidity(Double.NaN));
    }
}
