package eggwright.invented.truth;

import java.util.List;

/**
 * The lamp, and the eye behind it.
 *
 * @param looks days of incubation on which trays are looked at, rising; may be none
 * @param atTransfer whether they are looked at once more before they go to the hatcher
 * @param missedClearPct of clears, each time, taken for live
 * @param missedDeadPct of dead ones, each time, taken for live
 * @param livePulledPct of live ones, each time, taken out for clear or dead
 * @param doubtfulPct of live ones called doubtful and left
 * @param unsortedPct of trays whose clears and blood rings are taken out without being told apart
 * @param carelessPct of evenings that are careless
 * @param carelessTimes how many times as many mistakes on a careless evening
 * @param openedClearsPct of clears that are opened the same evening
 */
public record LampTruth(
        List<Integer> looks,
        AtTransfer atTransfer,
        double missedClearPct,
        double missedDeadPct,
        double livePulledPct,
        double doubtfulPct,
        double unsortedPct,
        double carelessPct,
        double carelessTimes,
        double openedClearsPct) {
    /** Whether there is a look at transfer. */
    public enum AtTransfer {
        LOOKED_AT,
        NOT_LOOKED_AT
    }

    public static final LampTruth PLAIN =
            new LampTruth(List.of(8, 14), AtTransfer.NOT_LOOKED_AT, 1.5, 2, 0.15, 0.8, 0, 5, 5, 35);

    public LampTruth {
        looks = looks.stream().distinct().sorted().toList();
        for (int day : looks) {
            Within.range("looks", day, 3, 40);
        }
        Within.pct("missed_clear_pct", missedClearPct);
        Within.pct("missed_dead_pct", missedDeadPct);
        Within.pct("live_pulled_pct", livePulledPct);
        Within.pct("doubtful_pct", doubtfulPct);
        Within.pct("unsorted_pct", unsortedPct);
        Within.pct("careless_pct", carelessPct);
        Within.range("careless_times", carelessTimes, 1, 50);
        Within.pct("opened_clears_pct", openedClearsPct);
    }
}
