package eggwright.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.node.ObjectNode;
import eggwright.book.entry.Kept;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;

/**
 * A whole book as JSON Lines: one entry a line with when it was received, its own text exactly as it came. Documented in
 * {@code docs/formats/book-json-lines.md}.
 */
public final class BookLines {
    private BookLines() {}

    /** What came of reading a line. */
    public sealed interface Line {
        /**
         * An entry of a book.
         *
         * @param written its text, as it lay in the other book
         */
        record Whole(Kept kept, String written) implements Line {}

        /** Not a line of a book. The reason names the field, the value and what would be right. */
        record Malformed(String reason) implements Line {}
    }

    /** One line, without its line end. */
    public static String write(Kept kept, String written) {
        return Tree.text(out -> {
            out.writeStartObject();
            out.writeStringField("received", kept.received().toString());
            out.writeNumberField("clock_offset_ms", kept.clockOffset().toMillis());
            if (fitsOnALine(written)) {
                out.writeFieldName("entry");
                out.writeRawValue(written);
            } else {
                out.writeStringField("entry_text", written);
            }
            out.writeEndObject();
        });
    }

    private static boolean fitsOnALine(String written) {
        return written.indexOf('\n') < 0
                && written.indexOf('\r') < 0
                && written.strip().equals(written);
    }

    /** Reads one line. */
    public static Line read(String line) {
        try {
            if (!(Tree.read(line) instanceof ObjectNode node)) {
                return new Line.Malformed("This line is not of a book. It is a JSON object with received and entry.");
            }
            var received = received(node);
            var offset = node.path("clock_offset_ms");
            if (!offset.isIntegralNumber() || !offset.canConvertToLong()) {
                throw new Misread("clock_offset_ms", offset, "a whole number of milliseconds");
            }
            var written = node.path("entry_text").isTextual()
                    ? node.path("entry_text").textValue()
                    : entryText(line, node);
            return switch (EntryCodec.read(written)) {
                case ReadEntry.Whole(var entry) ->
                    new Line.Whole(new Kept(entry, received, Duration.ofMillis(offset.longValue())), written);
                case ReadEntry.Malformed(var reason) -> new Line.Malformed(reason);
            };
        } catch (Misread refused) {
            return new Line.Malformed(String.valueOf(refused.getMessage()));
        }
    }

    private static Instant received(ObjectNode node) {
        var found = node.path("received");
        try {
            return Instants.utc(found.asText());
        } catch (DateTimeException notOne) {
            throw new Misread("received", found, "an instant in UTC, such as 2027-04-05T13:00:00Z");
        }
    }

    /** The text of the field "entry", character for character. */
    private static String entryText(String line, ObjectNode node) {
        if (!node.path("entry").isObject()) {
            throw new Misread("entry", node.path("entry"), "an entry, a JSON object");
        }
        try (var parser = Tree.FACTORY.createParser(line)) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                var name = parser.currentName();
                parser.nextToken();
                int from = (int) parser.currentTokenLocation().getCharOffset();
                parser.skipChildren();
                if (name.equals("entry")) {
                    return line.substring(from, (int) parser.currentLocation().getCharOffset());
                }
            }
            throw new IllegalStateException("This line had an entry a moment ago");
        } catch (JsonProcessingException readBefore) {
            throw new IllegalStateException("This line was JSON a moment ago", readBefore);
        } catch (IOException impossible) {
            throw new UncheckedIOException("Reading from memory", impossible);
        }
    }
}
