package eggwright.desk.intake;

import eggwright.desk.words.Words;
import eggwright.sheet.problem.Problem;

/** A problem of a file on a page: what a command would ask for by an option is asked for in a form. */
final class ProblemWords {
    private static final String OPTION = "--";

    private ProblemWords() {}

    /** Beside the form that asks for it. */
    static String say(Problem problem, Words words) {
        return instead(problem, problem.right().contains("zone") ? words.say("right.zone") : words.say("right.below"));
    }

    /** Where the form is a touch away. */
    static String sayFromAfar(Problem problem, Words words) {
        return instead(problem, words.say("right.look"));
    }

    private static String instead(Problem problem, String right) {
        if (!problem.right().contains(OPTION)) {
            return problem.words();
        }
        return new Problem(problem.file(), problem.row(), problem.column(), problem.value(), problem.what(), right)
                .words();
    }
}
