package eggwright.rates;

/** What is compared between a group and the rest of the farm. */
public enum Measure {
    FERTILITY("fertility"),
    APPARENT_FERTILITY("apparent_fertility"),
    HATCH_OF_FERTILE("hatch_of_fertile");

    private final String word;

    Measure(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
