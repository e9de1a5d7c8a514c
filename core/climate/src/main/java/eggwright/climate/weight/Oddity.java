package eggwright.climate.weight;

import eggwright.book.name.TrayName;
import java.time.Instant;

/** A weighing that cannot be right. It stays in the book; the loss is reckoned without it. */
public record Oddity(TrayName tray, Instant at, What what) {
    /** What is odd. */
    public enum What {
        /** The eggs weigh more than at the weighing before: an egg never gains. */
        GAINED,
        /** They lost more in the time than any shell lets out. */
        LOST_TOO_MUCH,
        /** The tray weighs as much as tray and eggs together. */
        NOTHING_LEFT
    }
}
