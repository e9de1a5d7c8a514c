package eggwright.cli.voice;

import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What every command has: help with an example, and {@code --json}. Built by hand rather than read from annotations,
 * which takes longer than most commands do.
 */
public final class Specs {
    private static final String JSON = "--json";

    private Specs() {}

    /** A command with {@code --help}, which shows the example. */
    public static CommandSpec of(String name, String about, Callable<Integer> action, String example) {
        var spec = CommandSpec.wrapWithoutInspection(action).name(name);
        // picocli reads a per cent sign as the start of a format.
        spec.usageMessage()
                .description(about.replace("%", "%%"))
                .footer("", "Example: " + example)
                .sortOptions(false);
        spec.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("show this, with an example")
                .build());
        return spec;
    }

    /** The option that asks for a machine-readable answer. */
    public static OptionSpec json(String about) {
        return OptionSpec.builder(JSON)
                .type(boolean.class)
                .arity("0")
                .description("answer as JSON: " + about)
                .build();
    }

    /** Whether {@code --json} was typed. */
    public static boolean asksForJson(CommandSpec spec) {
        return Boolean.TRUE.equals(spec.findOption(JSON).getValue());
    }
}
