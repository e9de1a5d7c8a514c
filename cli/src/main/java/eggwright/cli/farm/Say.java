package eggwright.cli.farm;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.answer.TableAnswers;

/** Gives one answer, as JSON or for people. */
final class Say {
    private Say() {}

    static void answer(FarmCommand command, Answer answer) {
        if (command.asksForJson()) {
            new JsonAnswers(command.out()).write(answer);
        } else {
            TableAnswers.write(command.out(), answer);
        }
    }
}
