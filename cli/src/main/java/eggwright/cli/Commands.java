package eggwright.cli;

import eggwright.cli.calc.Calc;
import eggwright.cli.farm.FarmCommands;
import eggwright.cli.voice.Specs;
import eggwright.cli.voice.Status;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * All commands by name. Only the one that is asked for is made ready, for reading the options of all of them would be
 * felt at each start; where no known name comes first, all are, so that help lists them.
 */
final class Commands {
    private Commands() {}

    static CommandLine lineFor(List<String> words) {
        var root = group("eggwright", "The hatch desk of a small game-bird farm.", "eggwright demo");
        root.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("show the version")
                .build());
        root.versionProvider(new Version());
        return filled(root, all(words), words);
    }

    /** A new command is named here. */
    private static Map<String, Supplier<CommandLine>> all(List<String> words) {
        var commands = new LinkedHashMap<String, Supplier<CommandLine>>();
        commands.put("calc", () -> calc(words.isEmpty() ? words : words.subList(1, words.size())));
        FarmCommands.all().forEach((name, spec) -> commands.put(name, () -> new CommandLine(spec.get())));
        return commands;
    }

    private static CommandLine calc(List<String> words) {
        var commands = new LinkedHashMap<String, Supplier<CommandLine>>();
        Calc.commands().forEach((name, spec) -> commands.put(name, () -> new CommandLine(spec.get())));
        var spec = group(
                "calc",
                "A pocket calculator: each formula and statistic on its own.",
                "eggwright calc interval --successes 51 --trials 54");
        return filled(spec, commands, words);
    }

    /** A command that only holds others: alone, it shows its help. */
    private static CommandSpec group(String name, String about, String example) {
        var showHelp = new ShowHelp();
        var spec = Specs.of(name, about, showHelp, example);
        showHelp.spec = spec;
        return spec;
    }

    private static CommandLine filled(
            CommandSpec spec, Map<String, Supplier<CommandLine>> commands, List<String> words) {
        var line = new CommandLine(spec);
        var asked = words.isEmpty() ? null : commands.get(words.getFirst());
        if (asked != null) {
            line.addSubcommand(words.getFirst(), asked.get());
        } else {
            commands.forEach((name, command) -> line.addSubcommand(name, command.get()));
        }
        return line;
    }

    private static final class ShowHelp implements Callable<Integer> {
        private @org.jspecify.annotations.Nullable CommandSpec spec;

        @Override
        public Integer call() {
            var line = java.util.Objects.requireNonNull(spec).commandLine();
            line.usage(line.getOut());
            return Status.DONE;
        }
    }
}
