package eggwright.trade;

/** A row of the species tables, and whether it speaks of the species itself. */
record ProfileRow(Scope scope, SourceRow shown) {
    enum Scope {
        THIS_SPECIES,
        ANY_SPECIES
    }
}
