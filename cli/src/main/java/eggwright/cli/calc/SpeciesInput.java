package eggwright.cli.calc;

import eggwright.trade.Species;
import eggwright.trade.SpeciesWord;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Reads the species of a calculation. */
final class SpeciesInput {
    static final String NAME = "species";
    static final String ALL = Arrays.stream(Species.values()).map(Species::word).collect(Collectors.joining(", "));

    private SpeciesInput() {}

    static Species of(Given given) {
        return switch (Species.parse(given.needed(NAME))) {
            case SpeciesWord.Known(Species species) -> species;
            case SpeciesWord.Unknown unknown -> throw given.wrong(NAME, unknown.message());
        };
    }
}
