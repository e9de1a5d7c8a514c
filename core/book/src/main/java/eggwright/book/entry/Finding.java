package eggwright.book.entry;

/** What one egg showed at the lamp. Marks only: what was done with the egg is counted beside it. */
public enum Finding {
    /** No sign of life: truly infertile, or dead too early to see. */
    CLEAR("clear"),
    /** A red circle without branches: dead after the blood vessels began. */
    BLOOD_RING("blood_ring"),
    /** Died since the last look. */
    DEAD("dead"),
    LIVE("live"),
    DOUBTFUL("doubtful"),
    CRACKED("cracked"),
    ROT("rot"),
    WRONG_END_UP("wrong_end_up");

    private final String word;

    Finding(String word) {
        this.word = word;
    }

    /** As written in files and commands. */
    public String word() {
        return word;
    }
}
