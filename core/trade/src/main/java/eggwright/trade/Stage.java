package eggwright.trade;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Where an egg or chick is lost, in the words of files and reports. */
public enum Stage {
    BLOOD_RING("blood_ring"),
    /** Died since the last look, seen at the lamp. */
    DEAD("dead"),
    CRACKED("cracked"),
    ROT("rot"),
    EARLY_DEAD("early_dead"),
    MID_DEAD("mid_dead"),
    LATE_DEAD("late_dead"),
    PIPPED_DEAD("pipped_dead"),
    CONTAMINATED("contaminated"),
    MALFORMED("malformed"),
    CULLED("culled"),
    DEAD_IN_BASKET("dead_in_basket"),
    /** Never began: an egg set in vain, but not a loss of a fertile egg. */
    INFERTILE("infertile");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The losses that a report lists, in its order: all but {@link #INFERTILE}. */
    public static List<Stage> losses() {
        return Arrays.stream(values()).filter(s -> s != INFERTILE).toList();
    }

    public static Optional<Stage> ofWord(String word) {
        return Arrays.stream(values()).filter(s -> s.word.equals(word)).findFirst();
    }
}
