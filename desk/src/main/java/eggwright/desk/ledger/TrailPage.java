package eggwright.desk.ledger;

import java.util.List;
import java.util.Optional;

/**
 * The versions of one note.
 *
 * @param text what it says now
 * @param standing whether it counts
 * @param versions oldest first
 * @param mendPath where to mend it; empty where its kind has no form
 */
public record TrailPage(
        String text,
        String standing,
        List<Version> versions,
        List<String> doubts,
        Optional<String> shownPath,
        Optional<String> mendPath,
        String withdrawPath) {
    public TrailPage {
        versions = List.copyOf(versions);
        doubts = List.copyOf(doubts);
    }

    /** One version as it was noted. */
    public record Version(
            String text,
            String happened,
            String noted,
            String received,
            String who,
            String device,
            String id,
            String mark) {}
}
