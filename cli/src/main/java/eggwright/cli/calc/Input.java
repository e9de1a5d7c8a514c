package eggwright.cli.calc;

/**
 * A value that a calculation takes.
 *
 * @param name {@code at-least}: the option {@code --at-least}, the column {@code at-least}
 * @param placeholder what stands for the value in help, as {@code N}
 * @param about what it is, its unit and what it is where not said
 * @param need whether the calculation can do without
 */
public record Input(String name, String placeholder, String about, Need need) {
    /** Whether a value has to be given, and how it is typed. */
    public enum Need {
        NEEDED,
        OPTIONAL,
        /** Needed, and typed without its option's name. */
        NEEDED_AS_A_WORD,
        /** Said or not said: an option without a value; in a file yes, no or empty. */
        SAID_OR_NOT
    }

    static Input needed(String name, String placeholder, String about) {
        return new Input(name, placeholder, about, Need.NEEDED);
    }

    static Input optional(String name, String placeholder, String about) {
        return new Input(name, placeholder, about, Need.OPTIONAL);
    }

    static Input saidOrNot(String name, String about) {
        return new Input(name, "", about, Need.SAID_OR_NOT);
    }

    /** Whether a file of rows has to have a column for it. */
    boolean isNeeded() {
        return switch (need) {
            case NEEDED, NEEDED_AS_A_WORD -> true;
            case OPTIONAL, SAID_OR_NOT -> false;
        };
    }
}
