package eggwright.cli.farm;

import eggwright.cli.voice.Refused;
import eggwright.cli.voice.Specs;
import eggwright.cli.voice.Status;
import eggwright.store.DataFolder;
import eggwright.store.StoreFault;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** One command on a farm's book: its options, and what it does with them. */
final class FarmCommand implements Callable<Integer> {
    private static final String DATA = "--data";

    private final Action action;
    private @Nullable CommandSpec spec;

    /** What a command does; gives its exit status. */
    interface Action {
        int run(FarmCommand command);
    }

    private FarmCommand(Action action) {
        this.action = action;
    }

    /** A command with {@code --help}, {@code --data} and {@code --json}. */
    static CommandSpec of(
            String name, String about, String example, Action action, List<OptionSpec> options, String... words) {
        var command = new FarmCommand(action);
        var spec = Specs.of(name, about, command, example);
        for (int i = 0; i < words.length; i++) {
            spec.addPositional(PositionalParamSpec.builder()
                    .index(Integer.toString(i))
                    .paramLabel(words[i])
                    .type(String.class)
                    .arity("1")
                    .build());
        }
        options.forEach(spec::addOption);
        spec.addOption(OptionSpec.builder(DATA)
                .paramLabel("DIR")
                .type(String.class)
                .description("the farm's data folder; Eggwright in the home folder where not given")
                .build());
        spec.addOption(Specs.json("one object"));
        command.spec = spec;
        return spec;
    }

    static OptionSpec option(String name, String placeholder, String about) {
        return OptionSpec.builder("--" + name)
                .paramLabel(placeholder)
                .type(String.class)
                .description(about)
                .build();
    }

    static OptionSpec flag(String name, String about) {
        return OptionSpec.builder("--" + name)
                .type(boolean.class)
                .arity("0")
                .description(about)
                .build();
    }

    private CommandSpec spec() {
        return Objects.requireNonNull(spec);
    }

    Optional<String> given(String option) {
        return Optional.ofNullable(spec().findOption("--" + option).getValue());
    }

    String needed(String option) {
        return given(option).orElseThrow(() -> new Refused("Still needed: --" + option + ". Nothing was done."));
    }

    boolean has(String flag) {
        return Boolean.TRUE.equals(spec().findOption("--" + flag).getValue());
    }

    String word(int index) {
        return spec().positionalParameters().get(index).getValue();
    }

    boolean asksForJson() {
        return Specs.asksForJson(spec());
    }

    PrintWriter out() {
        return spec().commandLine().getOut();
    }

    PrintWriter err() {
        return spec().commandLine().getErr();
    }

    DataFolder data() {
        return DataFolder.at(
                given("data").map(Path::of).orElseGet(() -> Path.of(System.getProperty("user.home"), "Eggwright")));
    }

    @Override
    public Integer call() {
        try {
            return action.run(this);
        } catch (StoreFault fault) {
            return switch (fault.why()) {
                case NO_BOOK, NEWER_BOOK, OLDER_BOOK, NOT_A_BOOK, OTHER_WRITER, IN_THE_WAY ->
                    throw new Refused(String.valueOf(fault.getMessage()));
                case NOT_WRITABLE, DAMAGED -> {
                    err().println(fault.getMessage());
                    yield Status.BROKE;
                }
            };
        }
    }
}
