package eggwright.invented.answer;

/** What really became of an egg, whether anybody saw it or not. */
public enum TrueFate {
    INFERTILE,
    CRACKED,
    CONTAMINATED,
    EARLY_DEAD,
    MID_DEAD,
    LATE_DEAD,
    PIPPED_DEAD,
    MALFORMED,
    /** Alive, and taken out at the lamp by mistake. */
    TAKEN_OUT_ALIVE,
    /** Pipped or about to, alive at the last pull. */
    TOO_LATE,
    DEAD_IN_BASKET,
    CULLED,
    SALEABLE;

    /** Whether a chick left the shell before the last pull. */
    public boolean isChick() {
        return switch (this) {
            case DEAD_IN_BASKET, CULLED, SALEABLE -> true;
            case INFERTILE,
                    CRACKED,
                    CONTAMINATED,
                    EARLY_DEAD,
                    MID_DEAD,
                    LATE_DEAD,
                    PIPPED_DEAD,
                    MALFORMED,
                    TAKEN_OUT_ALIVE,
                    TOO_LATE -> false;
        };
    }
}
