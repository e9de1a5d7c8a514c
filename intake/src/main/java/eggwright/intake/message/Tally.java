package eggwright.intake.message;

import java.util.Optional;

/**
 * What came of messages since the desk was opened.
 *
 * @param kept readings that are new
 * @param before readings that were known already
 * @param refused messages of which nothing was kept
 * @param last why the last of them was refused; empty where none was
 */
public record Tally(long kept, long before, long refused, Optional<Complaint.Last> last) {
    public static final Tally NOTHING = new Tally(0, 0, 0, Optional.empty());

    Tally with(long fresh, long known) {
        return new Tally(kept + fresh, before + known, refused, last);
    }

    Tally with(Complaint.Last refusal) {
        return new Tally(kept, before, refused + 1, Optional.of(refusal));
    }
}
