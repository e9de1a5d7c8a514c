package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import java.util.List;

/** One thing that can be worked out from values alone. */
public interface Calculation {
    /** The word after {@code calc}. */
    String name();

    /** What it answers, in a sentence. */
    String about();

    /** A whole command that a person can copy. */
    String example();

    /** What it takes; options on the command line, columns in a file of rows. */
    List<Input> inputs();

    /**
     * The answer.
     *
     * @throws eggwright.cli.voice.Refused if a value is missing or wrong; the sentence names it
     * @throws eggwright.units.OutOfRange if the formula is not made for a value
     */
    Answer answer(Given given);
}
