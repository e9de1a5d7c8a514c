package eggwright.trade;

/** What became of a word that was read as a species. */
public sealed interface SpeciesWord {
    record Known(Species species) implements SpeciesWord {}

    /**
     * Not a word that Eggwright knows.
     *
     * @param typed the text as it stood
     * @param nearest the species whose word, or synonym, needs the fewest letters changed
     */
    record Unknown(String typed, Species nearest) implements SpeciesWord {
        public String message() {
            return "\"" + typed + "\" is not a species Eggwright knows. Did you mean " + nearest.word() + "?";
        }
    }
}
