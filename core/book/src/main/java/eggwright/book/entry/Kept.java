package eggwright.book.entry;

import java.time.Duration;
import java.time.Instant;

/**
 * An entry as the book holds it.
 *
 * @param entry as the device made it
 * @param received when the desk received it
 * @param clockOffset how far the device's clock was behind the desk's when measured; zero where it was not measured.
 *     Lies beside the entry, outside its content.
 */
public record Kept(Entry entry, Instant received, Duration clockOffset) {
    /** The instant by which the fold orders: the device's time, corrected. */
    public Instant happened() {
        return entry.happened().toInstant().plus(clockOffset);
    }

    /** From when the book counts this as known. */
    public Instant knownFrom() {
        return switch (entry.origin()) {
            case NOTED -> received;
            case IMPORTED -> happened();
        };
    }
}
