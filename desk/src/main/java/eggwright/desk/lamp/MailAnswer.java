package eggwright.desk.lamp;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the desk says to a phone's mail.
 *
 * @param deskAt by the desk's clock
 * @param answers one for each entry, in the order sent
 */
record MailAnswer(String farm, Instant deskAt, List<OfEntry> answers) {
    /** What became of an entry. */
    enum Became {
        KEPT,
        KEPT_BEFORE,
        /** The desk could not write; the phone keeps it and tries again. */
        NOT_NOW,
        REFUSED
    }

    /**
     * @param reason for the person who counted; absent where the entry is kept
     */
    record OfEntry(Became became, @Nullable String reason) {
        static final OfEntry KEPT = new OfEntry(Became.KEPT, null);
        static final OfEntry KEPT_BEFORE = new OfEntry(Became.KEPT_BEFORE, null);

        static OfEntry notNow(String reason) {
            return new OfEntry(Became.NOT_NOW, reason);
        }

        static OfEntry refused(String reason) {
            return new OfEntry(Became.REFUSED, reason);
        }
    }
}
