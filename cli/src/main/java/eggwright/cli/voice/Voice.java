package eggwright.cli.voice;

import eggwright.sheet.problem.Near;
import java.io.PrintWriter;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * How the program speaks in a terminal: answers on {@code out}, messages on {@code err}, in whole sentences that say
 * what happened and what to do.
 */
public record Voice(PrintWriter out, PrintWriter err) {
    private static final Logger LOG = Logger.getLogger("eggwright");

    /** The command line could not be read: says which word, and how to see an example. */
    public int misread(ParameterException misreading, String[] words) {
        var at = misreading.getCommandLine();
        err.println(sentenceFor(misreading, at) + " Nothing was done. Examples: "
                + at.getCommandSpec().qualifiedName() + " --help");
        return Status.WRONG_INPUT;
    }

    /** A command ended early: either what it was given is wrong, or something broke. */
    public int failed(Exception fault, CommandLine at) {
        if (fault instanceof Refused) {
            err.println(fault.getMessage());
            return Status.WRONG_INPUT;
        }
        LOG.log(Level.FINE, fault, () -> at.getCommandSpec().qualifiedName() + " failed");
        err.println("Something broke in \"" + at.getCommandSpec().qualifiedName() + "\": " + fault
                + ". What was kept before is still kept. Run it again; if it returns, send us this line.");
        return Status.BROKE;
    }

    private static String sentenceFor(ParameterException misreading, CommandLine at) {
        return switch (misreading) {
            case UnmatchedArgumentException unmatched -> unknown(unmatched.getUnmatched(), at);
            case MissingParameterException missing -> missing(missing);
            case OverwrittenOptionException twice -> name(twice) + " is given twice. Give it once.";
            default ->
                misreading.getCause() instanceof Refused refused
                        ? String.valueOf(refused.getMessage())
                        : ended(String.valueOf(misreading.getMessage()));
        };
    }

    private static String name(OverwrittenOptionException twice) {
        var argument = twice.getOverwritten();
        return argument instanceof CommandLine.Model.OptionSpec option
                ? option.longestName()
                : argument == null ? "it" : argument.paramLabel();
    }

    private static String missing(MissingParameterException missing) {
        var names = missing.getMissing().stream()
                .map(argument -> argument instanceof CommandLine.Model.OptionSpec option
                        ? option.longestName()
                        : argument.paramLabel())
                .toList();
        return names.isEmpty()
                ? ended(String.valueOf(missing.getMessage()))
                : "Still needed: " + String.join(", ", names) + ".";
    }

    private static String unknown(List<String> words, CommandLine at) {
        var word = words.isEmpty() ? "" : words.getFirst();
        var known = word.startsWith("-")
                ? at.getCommandSpec().optionsMap().keySet()
                : at.getSubcommands().keySet();
        var near = Near.to(word, known);
        return "\"" + word + "\" is not known here."
                + near.map(n -> " Did you mean \"" + n + "\"?").orElse("");
    }

    private static String ended(@Nullable String sentence) {
        var text = sentence == null ? "" : sentence;
        return text.endsWith(".") ? text : text + ".";
    }
}
