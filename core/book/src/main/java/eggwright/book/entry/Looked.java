package eggwright.book.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One look at all or part of a load. Eggs not looked at are not live.
 *
 * @param lookedAt absent where the whole of the scope was looked at
 * @param countedBefore eggs counted in the tray before starting; absent where the book was believed
 * @param removedUnsorted taken out without naming why
 * @param minutesOut how long the tray was out of the heat; absent where not timed
 */
public record Looked(
        Scope scope,
        @Nullable Integer lookedAt,
        @Nullable Integer countedBefore,
        List<FindingCount> findings,
        int removedUnsorted,
        @Nullable Integer minutesOut)
        implements Payload {
    public Looked {
        findings = List.copyOf(findings);
        Checks.count("Removed, not sorted", removedUnsorted);
        if (lookedAt != null) {
            Checks.count("Looked at", lookedAt);
        }
        if (countedBefore != null) {
            Checks.count("Counted before", countedBefore);
        }
        if (minutesOut != null) {
            Checks.count("Minutes out", minutesOut);
        }
    }

    /** Eggs that showed a finding. */
    public int seen(Finding finding) {
        return findings.stream()
                .filter(f -> f.finding() == finding)
                .mapToInt(FindingCount::seen)
                .sum();
    }

    /** Eggs that left the load at this look. */
    public int takenOut() {
        return removedUnsorted
                + findings.stream().mapToInt(FindingCount::takenOut).sum();
    }
}
