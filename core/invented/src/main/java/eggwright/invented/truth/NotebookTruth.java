package eggwright.invented.truth;

/**
 * How the keepers note.
 *
 * @param slipPct of counts noted wrong, and mended within two days
 * @param unmendedSlips counts before a look that differ from the book and that nobody has settled
 * @param latePct of entries that reach the desk late
 * @param lateHours how late at most
 * @param roundMissedPct of rounds not noted
 * @param weighedTrays trays of each species in a set that are weighed
 * @param remarksPerWeek on average
 */
public record NotebookTruth(
        double slipPct,
        int unmendedSlips,
        double latePct,
        double lateHours,
        double roundMissedPct,
        int weighedTrays,
        double remarksPerWeek) {
    public static final NotebookTruth PLAIN = new NotebookTruth(1, 1, 2, 36, 4, 2, 1.2);

    public NotebookTruth {
        Within.pct("slip_pct", slipPct);
        Within.range("unmended_slips", unmendedSlips, 0, 100);
        Within.pct("late_pct", latePct);
        Within.range("late_hours", lateHours, 0, 1000);
        Within.pct("round_missed_pct", roundMissedPct);
        Within.range("weighed_trays", weighedTrays, 0, 1000);
        Within.range("remarks_per_week", remarksPerWeek, 0, 50);
    }
}
