package eggwright.desk.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class RateShownTest {
    /** Wilson's interval of 51 of 54, from Wilson 1927: 0.8489 to 0.9809. */
    @Test
    void rate_isShownInWholePercent() {
        assertEquals(Optional.of("94 % (85 to 98)"), shown(51, 54, 84.89, 98.09));
    }

    @Test
    void rate_isShownInTenths_whenItsIntervalIsNarrow() {
        assertEquals(Optional.of("89.5 % (88.9 to 90.1)"), shown(8953, 10_000, 88.9, 90.1));
    }

    @Test
    void rate_hasNoShare_whenThereWasNothingToCount() {
        assertEquals(Optional.empty(), shown(0, 0, 0, 100));
    }

    private static Optional<String> shown(long count, long of, double low, double high) {
        return RateShown.of(count, of, low, high, Locale.ENGLISH).share().map(s -> s.replace('\u00a0', ' '));
    }
}
