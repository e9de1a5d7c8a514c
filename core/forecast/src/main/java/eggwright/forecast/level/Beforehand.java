package eggwright.forecast.level;

/**
 * What is believed of one stage before the farm has counted anything. Levels and slopes come from what was published; for
 * the three kinds of scatter nothing was, and their distributions are ours, stated here for each single loss.
 *
 * @param level where published farms would stand in the middle of the season, as {@link Grid#density} gives it
 * @param slope mean change through the season, in logits a week
 * @param slopeSpread of farms about it
 * @param leverage how far the stage moves where each of its losses moves, independent, by one logit
 */
public record Beforehand(double[] level, double slope, double slopeSpread, double leverage) {
    /** How fast a loss wanders on one farm: half-normal, logits a week. */
    static final double DRIFT = 0.1;
    /** How far a loss of whole sets lies from its level: half-normal, logits. */
    static final double SETS = 0.25;
    /** Likeness of eggs in one tray: exponential with this mean, as for a farm's learnt shares. */
    static final double TRAYS = 0.05;
}
