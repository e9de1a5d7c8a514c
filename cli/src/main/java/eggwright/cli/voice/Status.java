package eggwright.cli.voice;

/** Exit statuses, the same for every command. */
public final class Status {
    /** Done. */
    public static final int DONE = 0;
    /** The answer is no: a check failed, or some rows could not be answered. */
    public static final int NO = 1;
    /** What was typed or read is wrong; nothing was changed. */
    public static final int WRONG_INPUT = 2;
    /** Something broke that the person at the keyboard could not help. */
    public static final int BROKE = 3;

    private Status() {}
}
