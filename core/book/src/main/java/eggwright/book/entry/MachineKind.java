package eggwright.book.entry;

/** The two kinds of machine, and the small one that does both. */
public enum MachineKind {
    SETTER,
    HATCHER,
    SETTER_AND_HATCHER
}
