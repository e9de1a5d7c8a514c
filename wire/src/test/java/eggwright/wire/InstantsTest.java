package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against the library's own readers: the same text is the same instant, or no instant, to both. */
class InstantsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-04-05T08:00-05:00",
                "2027-04-05T08:00:20-05:00",
                "2027-04-05T08:00:20.5-05:00",
                "2027-04-05T08:00+05:45",
                "2027-04-05T08:00-03:30",
                "2027-04-05T08:00-00:00",
                "2027-04-05T08:00Z",
                "2028-02-29T23:59+14:00",
                "0000-01-01T00:00+00:00",
                "2027-02-29T08:00-05:00",
                "2027-13-05T08:00-05:00",
                "2027-04-31T08:00-05:00",
                "2027-04-05T24:00-05:00",
                "2027-04-05T08:60-05:00",
                "2027-04-05T08:00:60-05:00",
                "2027-04-05T08:00-19:00",
                "2027-04-05T08:00-05:60",
                "2027-04-05T08:00 05:00",
                "2027-04-05 08:00-05:00",
                "2027-04-05T08:0O-05:00",
                "2027/04/05T08:00-05:00",
                "-027-04-05T08:00-05:00",
                "2027-04-05T08:00-05.00",
                "tomorrow at eight, local"
            })
    void withOffset_readsAsTheLibraryDoes(String text) {
        OffsetDateTime library;
        try {
            library = OffsetDateTime.parse(text);
        } catch (DateTimeException notOne) {
            assertThrows(DateTimeException.class, () -> Instants.withOffset(text));
            return;
        }
        assertEquals(library, Instants.withOffset(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-04-05T13:00:00Z",
                "2027-04-05T13:00:20Z",
                "2027-04-05T13:00:20.123456Z",
                "2027-12-31T23:59:60Z",
                "2027-04-05T24:00:00Z",
                "2027-02-29T13:00:00Z",
                "2027-04-05T13:00:00z",
                "2027-04-05T13:00:00+"
            })
    void utc_readsAsTheLibraryDoes(String text) {
        Instant library;
        try {
            library = Instant.parse(text);
        } catch (DateTimeException notOne) {
            assertThrows(DateTimeException.class, () -> Instants.utc(text));
            return;
        }
        assertEquals(library, Instants.utc(text));
    }
}
