package eggwright.invented.truth;

/**
 * The egg room.
 *
 * @param rejectedPct of eggs gathered
 * @param freeDays days of storage without harm
 * @param earlyPerDay rise of early death for each day of storage beyond those, in logits
 * @param keepDays eggs older than this are discarded before a set
 * @param soldPctPerWeek of the eggs left over after a set, sold as hatching eggs
 * @param eatenPerWeek eggs for the kitchen, where some are left over
 */
public record EggRoomTruth(
        double rejectedPct, int freeDays, double earlyPerDay, int keepDays, double soldPctPerWeek, int eatenPerWeek) {
    public static final EggRoomTruth PLAIN = new EggRoomTruth(4, 7, 0.08, 14, 50, 6);

    public EggRoomTruth {
        Within.pct("rejected_pct", rejectedPct);
        Within.range("free_days", freeDays, 0, 60);
        Within.range("early_per_day", earlyPerDay, 0, 2);
        Within.range("keep_days", keepDays, 1, 60);
        Within.pct("sold_pct_per_week", soldPctPerWeek);
        Within.range("eaten_per_week", eatenPerWeek, 0, 1000);
    }
}
