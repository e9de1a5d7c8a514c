package eggwright.trade;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;
import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import java.util.EnumMap;
import java.util.Map;

/** The table of first guesses. A species without a figure of its own takes the pheasant's, and the source says so. */
final class Guesses {
    private final Map<Species, Map<Stage, Sourced<Double>>> shares;

    private Guesses(Map<Species, Map<Stage, Sourced<Double>>> shares) {
        this.shares = shares;
    }

    static Guesses shipped() {
        var shares = new EnumMap<Species, Map<Stage, Sourced<Double>>>(Species.class);
        for (var row : CsvTable.beside(Guesses.class, "losses.csv").rows()) {
            var species = SpeciesWords.ofTable(row.getOrDefault("species", "")).orElseThrow();
            var stage = Stage.ofWord(row.getOrDefault("stage", "")).orElseThrow();
            var share = Double.parseDouble(row.getOrDefault("share_pct", "")) / 100;
            shares.computeIfAbsent(species, s -> new EnumMap<>(Stage.class))
                    .put(stage, new Sourced<>(share, source(row.getOrDefault("source", ""))));
        }
        return new Guesses(shares);
    }

    FirstGuess of(Species species) {
        return new FirstGuess(
                share(species, Stage.INFERTILE),
                share(species, Stage.EARLY_DEAD),
                share(species, Stage.MID_DEAD),
                share(species, Stage.LATE_DEAD),
                share(species, Stage.PIPPED_DEAD),
                share(species, Stage.CONTAMINATED),
                share(species, Stage.CRACKED),
                share(species, Stage.CULLED),
                share(species, Stage.DEAD_IN_BASKET));
    }

    private Sourced<Double> share(Species species, Stage stage) {
        var own = shares.getOrDefault(species, Map.of()).get(stage);
        if (own != null) {
            return own;
        }
        var pheasant = shares.getOrDefault(Species.PHEASANT, Map.of()).get(stage);
        if (pheasant == null) {
            throw new IllegalStateException("The table of losses has no " + stage.word() + " for pheasant");
        }
        return new Sourced<>(
                pheasant.value(),
                new Source.Computed("from pheasant; " + pheasant.source().words()));
    }

    private static Source source(String cell) {
        return cell.startsWith("computed: ")
                ? new Source.Computed(cell.substring("computed: ".length()))
                : Sources.shipped().read(cell).getFirst();
    }
}
