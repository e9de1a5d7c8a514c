package eggwright.forecast.level;

import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One set at one stage, in the order of time.
 *
 * @param parts those of its species of which anything was counted, or is to be drawn
 */
public record Observed(LocalDate setOn, Map<Species, Part> parts) {
    public Observed {
        parts = Map.copyOf(parts);
    }

    /**
     * The eggs of one species.
     *
     * @param week of the species' season, 0 in its middle; slopes count from there
     * @param counts what was counted; empty where there were none, or have not come so far
     * @param waiting pens whose eggs are still to come through
     */
    public record Part(double week, List<Count> counts, Set<Pen> waiting) {
        static final Part NONE = new Part(0, List.of(), Set.of());

        public Part {
            counts = List.copyOf(counts);
            waiting = Set.copyOf(waiting);
        }
    }

    /**
     * @param expectedLogit what is expected of these eggs at offset 0, in logits: the trade's losses
     * @param trays trays counted together
     * @param pens share of the eggs from each pen; empty where not recorded
     */
    public record Count(int of, int through, int trays, double expectedLogit, Map<Pen, Double> pens) {
        public Count {
            pens = Map.copyOf(pens);
        }
    }
}
