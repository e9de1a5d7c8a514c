package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Kept;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class BookLinesTest {
    private static final Instant RECEIVED = Instant.parse("2027-04-14T00:02:11.120Z");

    private static String line(String written) {
        var read = assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(written));
        return BookLines.write(new Kept(read.entry(), RECEIVED, Duration.ofMillis(1500)), written);
    }

    private static String back(String line) {
        return assertInstanceOf(BookLines.Line.Whole.class, BookLines.read(line), line)
                .written();
    }

    @Test
    void line_keepsTheTextOfAnEntry_characterForCharacter() {
        var odd = EntryCodec.write(Samples.entry(Samples.all().getFirst()))
                .replace("\"who\":", "\"weather\": {\"rain\" :[1.50, 2E3 ]},  \"who\" : ")
                .replace("Wren", "W\\u0072en");
        assertTrue(line(odd).endsWith("\"entry\":" + odd + "}"));
        assertEquals(odd, back(line(odd)));
    }

    @Test
    void line_holdsATextOfSeveralLines_asAString() {
        var tall = EntryCodec.write(Samples.entry(Samples.all().getFirst())).replace(",", ",\n  ");
        assertEquals(1, line(tall).lines().count());
        assertEquals(tall, back(line(tall)));
    }

    @Test
    void malformedLine_namesTheField() {
        assertEquals(
                new BookLines.Line.Malformed(
                        "Field received is \"yesterday\"; it should be an instant in UTC, such as 2027-04-05T13:00:00Z."),
                BookLines.read("{\"received\":\"yesterday\",\"clock_offset_ms\":0,\"entry\":{}}"));
        assertEquals(
                new BookLines.Line.Malformed("Field entry is missing; it should be an entry, a JSON object."),
                BookLines.read("{\"received\":\"2027-04-05T13:00:00Z\",\"clock_offset_ms\":0}"));
        assertInstanceOf(BookLines.Line.Malformed.class, BookLines.read("set,set_on,species"));
    }
}
