package eggwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * All commands by name. Only the one that is asked for is made ready, for reading the options of all of them would be
 * felt at each start; with no known name first, all are, so that help lists them.
 */
final class Commands {
    @Command(
            name = "eggwright",
            mixinStandardHelpOptions = true,
            versionProvider = Version.class,
            description = "The hatch desk of a small game-bird farm.",
            footer = {"", "Example: eggwright demo"})
    private static final class Root {}

    private Commands() {}

    private static Map<String, Function<Voice, Object>> all() {
        return new LinkedHashMap<>();
    }

    static CommandLine lineFor(List<String> words, Voice voice) {
        return group(new Root(), all(), words, voice);
    }

    private static CommandLine group(
            Object top, Map<String, Function<Voice, Object>> commands, List<String> words, Voice voice) {
        var line = new CommandLine(top);
        var asked = words.isEmpty() ? null : commands.get(words.getFirst());
        if (asked != null) {
            line.addSubcommand(words.getFirst(), asked.apply(voice));
        } else {
            commands.forEach((name, command) -> line.addSubcommand(name, command.apply(voice)));
        }
        return line;
    }
}
