package eggwright.forecast.history;

import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * One set of one species on its way.
 *
 * @param setOn local date of day 0
 * @param stages what was counted so far, by stage
 * @param waiting eggs in machines now, in groups that have come equally far
 * @param chicksSoFar saleable chicks of earlier pulls, while more are to come
 * @param progress whether the last pull was made
 * @param saleable saleable chicks in all, where finished; otherwise so far
 * @param eggsSet eggs set
 */
public record Passage(
        SetName set,
        Species species,
        LocalDate setOn,
        Map<StageKind, List<Came>> stages,
        List<Waiting> waiting,
        int chicksSoFar,
        Progress progress,
        int saleable,
        int eggsSet) {
    public Passage {
        stages = Map.copyOf(stages);
        waiting = List.copyOf(waiting);
    }

    /** Whether chicks may still come. */
    public enum Progress {
        RUNNING,
        FINISHED
    }

    /**
     * Eggs that have come equally far.
     *
     * @param lookedOn day of the last look at them; 0 where none was taken
     */
    public record Waiting(int eggs, int trays, int lookedOn, Map<PenName, Double> pens) {
        public Waiting {
            pens = Map.copyOf(pens);
        }
    }

    public List<Came> stage(StageKind kind) {
        return stages.getOrDefault(kind, List.of());
    }
}
