package eggwright.rates;

/** On what a fertility stands. Figures of different basis are not ranked against each other. */
public enum Basis {
    /** Every clear was opened. */
    OPENED("opened"),
    /** No clear was opened: what the lamp says. */
    APPARENT("apparent"),
    /** Some clears were opened, some not. */
    MIXED("mixed");

    private final String word;

    Basis(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
