package eggwright.forecast.level;

import eggwright.forecast.chance.LuckScale;

/**
 * What is believed of one stage of one species before the farm has counted anything. Levels and slopes come from what was
 * published; for the four kinds of scatter nothing was, and their distributions are ours, stated here for each single loss.
 *
 * @param scale on which luck moves all farms alike; all that follows counts on it
 * @param level where published farms would stand in the middle of the season, as {@link eggwright.forecast.chance.Grid#density} gives it
 * @param slopeSpread how far farms' change through the season lies from the published one, for a stage that moves as its one loss
 *     does, a week
 * @param pulls how far the stage moves where one of the losses moves by a logit, by loss; the same losses in the same order
 *     for all species
 * @param likeness of the eggs of a tray at this stage where they are wholly alike in each loss, 0 to 1
 */
public record Beforehand(LuckScale scale, double[] level, double slopeSpread, double[] pulls, double likeness) {
    /** How fast a loss wanders on one farm: half-normal, logits a week. */
    static final double DRIFT = 0.1;
    /** How far a loss of whole sets lies from its level: half-normal, logits. */
    static final double SETS = 0.25;
    /** How far a loss of one pen lies from its farm's: half-normal, logits. */
    static final double PENS = 0.35;
    /** How fast a loss of one pen leaves that of the others, logits a week. */
    static final double PEN_DRIFT = 0.05;
    /** Likeness of eggs in one tray: exponential with this mean, as for a farm's learnt shares. */
    static final double TRAYS = 0.05;

    /** How luck that strikes each loss by one logit, independent, moves this stage and that of another species together. */
    double inCommon(Beforehand other) {
        double sum = 0;
        for (int i = 0; i < pulls.length; i++) {
            sum += pulls[i] * other.pulls[i];
        }
        return sum;
    }
}
