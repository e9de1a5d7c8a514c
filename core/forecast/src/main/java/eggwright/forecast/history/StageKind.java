package eggwright.forecast.history;

/** A stretch of an egg's way that is counted at both ends. Each has its own level, learnt on its own. */
public enum StageKind {
    /** From the set to what is left after the first look. */
    SET_TO_FIRST_LOOK("set_to_first_look"),
    /** From one look to what is left after the next. */
    LOOK_TO_LOOK("look_to_look"),
    /** From the last look to saleable chicks. */
    LAST_LOOK_TO_CHICK("last_look_to_chick"),
    /** From the set to saleable chicks, where nobody looked. */
    SET_TO_CHICK("set_to_chick");

    private final String word;

    StageKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
