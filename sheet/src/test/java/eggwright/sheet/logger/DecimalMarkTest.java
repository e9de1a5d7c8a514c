package eggwright.sheet.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against the parser of the JDK. */
class DecimalMarkTest {
    @Test
    void number_isWhatTheJdkReads() {
        var random = new SplittableRandom(17);
        for (int i = 0; i < 20_000; i++) {
            var digits = random.ints(random.nextInt(1, 25), 0, 10)
                    .mapToObj(String::valueOf)
                    .collect(Collectors.joining());
            int whole = random.nextInt(digits.length() + 1);
            var text = (random.nextInt(4) == 0 ? "-" : "")
                    + digits.substring(0, whole)
                    + (whole < digits.length() ? "." + digits.substring(whole) : "");
            double read = Double.parseDouble(text);
            assertEquals(read, DecimalMark.POINT.number(text), text);
            assertEquals(read, DecimalMark.COMMA.number(text.replace('.', ',')), text);
            assertEquals(read, DecimalMark.POINT.number(text + " °F"), text);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-",
                "+",
                ".",
                "1.2.3",
                "12,5",
                "1e5",
                "5-",
                "0x1p3",
                "99.5 Fahrenheit",
                "123456789012345678.9.1",
                "123456789012345678,9",
                "1234567890123456x7",
                "NaN",
                "Infinity"
            })
    void text_thatIsNoNumber_isNone(String text) {
        assertTrue(Double.isNaN(DecimalMark.POINT.number(text)), text);
        assertTrue(DecimalMark.POINT.read(text).isEmpty(), text);
    }
}
