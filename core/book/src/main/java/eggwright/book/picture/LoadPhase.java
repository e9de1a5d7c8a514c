package eggwright.book.picture;

/** How far a load has come. */
public enum LoadPhase {
    IN_SETTER,
    IN_HATCHER,
    /** Nothing of it is in a machine any more. */
    OUT
}
