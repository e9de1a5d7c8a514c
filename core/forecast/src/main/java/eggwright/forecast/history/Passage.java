package eggwright.forecast.history;

import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * One set on its way.
 *
 * @param species of most of its eggs
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
     * @param species of most of them
     * @param lookedOn day of the last look at them; 0 where none was taken
     */
    public record Waiting(Species species, int eggs, int trays, int lookedOn, Map<PenName, Double> pens) {
        public Waiting {
            pens = Map.copyOf(pens);
        }
    }

    public List<Came> stage(StageKind kind) {
        return stages.getOrDefault(kind, List.of());
    }

    /** What was counted of the eggs of one species. */
    public List<Came> stage(StageKind kind, Species of) {
        return stage(kind).stream().filter(c -> c.species() == of).toList();
    }

    public List<Waiting> waiting(Species of) {
        return waiting.stream().filter(w -> w.species() == of).toList();
    }

    /** The species of which anything was counted or is waiting. */
    public Set<Species> allSpecies() {
        var all = new TreeSet<Species>();
        stages.values().forEach(counts -> counts.forEach(c -> all.add(c.species())));
        waiting.forEach(w -> all.add(w.species()));
        return all;
    }
}
