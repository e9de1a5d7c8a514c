package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** One thing that can be worked out from a whole file. */
interface FileCalculation {
    /** The word after {@code calc}. */
    String name();

    /** What it answers, in a sentence. */
    String about();

    /** A whole command that a person can copy. */
    String example();

    /** What it takes beside the file. */
    List<Input> inputs();

    /** Those inputs that may be given more than once; their values come joined by semicolons. */
    default Set<String> repeatable() {
        return Set.of();
    }

    /**
     * The answer.
     *
     * @throws eggwright.cli.voice.Refused if the file or a value is wrong; the sentence names file, row and column
     * @throws eggwright.units.OutOfRange if the method is not made for a value
     */
    Answer answer(Path file, Given given);
}
