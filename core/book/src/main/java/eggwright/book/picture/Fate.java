package eggwright.book.picture;

/**
 * What became of an egg that was set. Every egg set has exactly one at any time; the fates of a load, a set, a season
 * add up to the eggs set. In the order in which fates happen.
 */
public enum Fate {
    INFERTILE("infertile", FateSort.OPENED),
    /** Clear at the lamp, taken out, not opened: infertile or dead too early to see. */
    CLEAR_UNOPENED("clears_unopened", FateSort.LAMP),
    BLOOD_RING("blood_ring", FateSort.LAMP),
    /** Dead at the lamp and not opened: it died between two looks. */
    DEAD("dead", FateSort.LAMP),
    CRACKED("cracked", FateSort.LAMP),
    ROT("rot", FateSort.LAMP),
    /** Taken out without naming why. */
    REMOVED_UNSORTED("removed_unsorted", FateSort.LAMP),
    EARLY_DEAD("early_dead", FateSort.OPENED),
    MID_DEAD("mid_dead", FateSort.OPENED),
    LATE_DEAD("late_dead", FateSort.OPENED),
    PIPPED_DEAD("pipped_dead", FateSort.OPENED),
    CONTAMINATED("contaminated", FateSort.OPENED),
    MALFORMED("malformed", FateSort.OPENED),
    /** Pipped, alive, and left at the last pull. */
    PIPPED_ALIVE_LEFT("pipped_alive_left", FateSort.TAKE_OFF),
    DEAD_IN_BASKET("dead_in_basket", FateSort.TAKE_OFF),
    CULLED("culled", FateSort.TAKE_OFF),
    SALEABLE("saleable", FateSort.TAKE_OFF),
    IN_SETTER("in_setter", FateSort.STILL_IN),
    IN_HATCHER("in_hatcher", FateSort.STILL_IN),
    /** After the last pull: neither hatched nor named. */
    UNACCOUNTED("unaccounted", FateSort.UNACCOUNTED);

    private final String word;
    private final FateSort sort;

    Fate(String word, FateSort sort) {
        this.word = word;
        this.sort = sort;
    }

    /** As written in files and commands. */
    public String word() {
        return word;
    }

    public FateSort sort() {
        return sort;
    }
}
