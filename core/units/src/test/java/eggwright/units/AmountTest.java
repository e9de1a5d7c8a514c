package eggwright.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountTest {
    /** 29.92 inHg is 1013.2 hPa, as in any table of the standard atmosphere. */
    @ParameterizedTest
    @CsvSource({
        "99.5F, 37.5, 55.2778",
        "37.5C, 37.5, 37.5",
        "52%, 52, 52",
        "101.3kPa, 1013, 1013",
        "29.92inHg, 1013.21, 1013.21"
    })
    void amount_isReadAsAValueOrAsADifference(String text, double value, double difference) {
        assertEquals(value, Amount.parse(text).standard(), 0.005);
        assertEquals(difference, Amount.parse(text).standardDifference(), 0.005);
    }

    @ParameterizedTest
    @CsvSource({"-0.6F", "+0.4C", "-3%", "1002hPa"})
    void amount_isReadBack_fromWhatItWrites(String text) {
        var amount = Amount.parse(text);
        assertEquals(amount, Amount.parse(amount.toString()));
    }

    @Test
    void amountWithoutUnit_isRefused() {
        assertThrows(OutOfRange.class, () -> Amount.parse("99.5"));
        assertThrows(OutOfRange.class, () -> Amount.parse("99.5K"));
        assertThrows(OutOfRange.class, () -> Amount.parse("hot"));
    }
}
