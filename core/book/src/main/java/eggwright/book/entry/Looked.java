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
 * @param places where in the tray eggs with a finding lay, as far as they were marked
 * @param sort absent for the usual look
 */
public record Looked(
        Scope scope,
        @Nullable Integer lookedAt,
        @Nullable Integer countedBefore,
        List<FindingCount> findings,
        int removedUnsorted,
        @Nullable Integer minutesOut,
        List<PlaceSeen> places,
        @Nullable LookSort sort)
        implements Payload {
    public Looked {
        findings = List.copyOf(findings);
        places = List.copyOf(places);
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

    /** A usual look, no places marked. */
    public Looked(
            Scope scope,
            @Nullable Integer lookedAt,
            @Nullable Integer countedBefore,
            List<FindingCount> findings,
            int removedUnsorted,
            @Nullable Integer minutesOut) {
        this(scope, lookedAt, countedBefore, findings, removedUnsorted, minutesOut, List.of(), null);
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
