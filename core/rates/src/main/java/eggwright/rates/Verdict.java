package eggwright.rates;

/** Whether a difference is real, in words that a person uses. */
public enum Verdict {
    COULD_BE_LUCK("could be luck"),
    HARDLY_LUCK("hardly luck"),
    TOO_FEW("too few eggs to tell");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
