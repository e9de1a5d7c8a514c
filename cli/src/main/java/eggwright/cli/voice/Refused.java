package eggwright.cli.voice;

import java.io.Serial;

/**
 * What was typed, or the file that was named, is wrong. Carries the whole sentence for the person: what happened, what
 * was kept, what to do. Thrown inside a command, it ends with {@link Status#WRONG_INPUT}.
 */
public final class Refused extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    /** A refusal in words that can be shown as they are. */
    public Refused(String sentence) {
        super(sentence, null, false, false);
    }
}
