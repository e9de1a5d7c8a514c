package eggwright.book.entry;

/**
 * How many eggs showed one finding, and what was done with them. The rest of those seen were left in.
 *
 * @param seen eggs that showed it
 * @param removed of those, taken out and not kept
 * @param keptToOpen of those, taken out and kept for break-out
 */
public record FindingCount(Finding finding, int seen, int removed, int keptToOpen) {
    public FindingCount {
        Checks.count("Seen " + finding.word(), seen);
        Checks.count("Removed " + finding.word(), removed);
        Checks.count("Kept to open " + finding.word(), keptToOpen);
        if (removed + keptToOpen > seen) {
            throw new eggwright.units.OutOfRange("Of " + seen + " " + finding.word() + ", " + (removed + keptToOpen)
                    + " were taken out; no more can be taken out than were seen.");
        }
    }

    /** All that were seen were taken out. */
    public static FindingCount removed(Finding finding, int count) {
        return new FindingCount(finding, count, count, 0);
    }

    /** All that were seen stayed in. */
    public static FindingCount left(Finding finding, int count) {
        return new FindingCount(finding, count, 0, 0);
    }

    /** Stayed in the tray. */
    public int leftIn() {
        return seen - removed - keptToOpen;
    }

    /** Left the tray. */
    public int takenOut() {
        return removed + keptToOpen;
    }
}
