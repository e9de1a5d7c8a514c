package eggwright.desk.intake;

import eggwright.desk.words.Words;
import eggwright.sheet.problem.Problem;

/** A problem of a file on a page: what a command would ask for by an option is asked for in the form. */
final class ProblemWords {
    private static final String OPTION = "--";

    private ProblemWords() {}

    static String say(Problem problem, Words words) {
        if (!problem.right().contains(OPTION)) {
            return problem.words();
        }
        return new Problem(
                        problem.file(),
                        problem.row(),
                        problem.column(),
                        problem.value(),
                        problem.what(),
                        problem.right().contains("zone") ? words.say("right.zone") : words.say("right.below"))
                .words();
    }
}
