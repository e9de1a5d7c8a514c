package eggwright.forecast.level;

import java.time.LocalDate;
import java.util.List;

/**
 * One set at one stage, in the order of time.
 *
 * @param week of the season, 0 in its middle; slopes count from there
 * @param counts what was counted; empty where the set has not come so far
 */
public record Observed(LocalDate setOn, double week, List<Count> counts) {
    public Observed {
        counts = List.copyOf(counts);
    }

    /**
     * @param expectedLogit what is expected of these eggs at offset 0, in logits: the trade's losses and the pens
     * @param trays trays counted together
     */
    public record Count(int of, int through, int trays, double expectedLogit) {}
}
