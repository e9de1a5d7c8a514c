package eggwright.book.store;

import eggwright.book.entry.Entry;
import java.time.Duration;

/**
 * An entry on its way into the book.
 *
 * @param written the bytes as they came, kept and exported unchanged
 * @param clockOffset how far the device's clock was behind; zero where not measured
 */
public record Offered(Entry entry, String written, Duration clockOffset) {}
