package eggwright.trade.source;

/** How much of a publication was read before its figure was used. */
public enum Evidence {
    /** The passage or abstract was read at its address. */
    SEEN("seen"),
    /** The text was read in a copy that carries no imprint; the tie to the publication is recalled. */
    SEEN_IN_A_COPY("seen in a copy"),
    /** The publication is real to the best of memory, but this part of it was not read. */
    RECALLED("recalled");

    private final String words;

    Evidence(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
