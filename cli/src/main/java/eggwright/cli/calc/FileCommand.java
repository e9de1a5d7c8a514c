package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.answer.ListedAnswers;
import eggwright.cli.voice.Refused;
import eggwright.cli.voice.Specs;
import eggwright.cli.voice.Status;
import eggwright.units.OutOfRange;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Runs one calculation over a whole file. */
final class FileCommand implements Callable<Integer> {
    private final FileCalculation calculation;
    private @Nullable CommandSpec spec;

    private FileCommand(FileCalculation calculation) {
        this.calculation = calculation;
    }

    /** Every one, in the order of help. */
    static Stream<FileCalculation> all() {
        return Stream.of(
                new MixedModelCalculation(),
                new BetaBinomialCalculation(),
                new ChartCalculation(),
                new DeathCurveCalculation());
    }

    /** The command of a calculation, with its options. */
    static CommandSpec specOf(FileCalculation calculation) {
        var command = new FileCommand(calculation);
        var spec = Specs.of(calculation.name(), calculation.about(), command, calculation.example());
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("FILE.csv")
                .description("a file with a header; columns separated by comma, semicolon or tab")
                .type(Path.class)
                .arity("0..1")
                .build());
        for (var input : calculation.inputs()) {
            var option = OptionSpec.builder("--" + input.name())
                    .paramLabel(input.placeholder())
                    .arity("1")
                    .description(input.about().replace("%", "%%"));
            spec.addOption(
                    calculation.repeatable().contains(input.name())
                            ? option.type(List.class)
                                    .auxiliaryTypes(String.class)
                                    .build()
                            : option.type(String.class).build());
        }
        spec.addOption(Specs.json("one object"));
        command.spec = spec;
        return spec;
    }

    @Override
    public Integer call() {
        var read = Objects.requireNonNull(spec);
        Path file = read.positionalParameters().getFirst().getValue();
        if (file == null) {
            throw new Refused("The file is still needed. Nothing was worked out. Example: " + calculation.example());
        }
        var out = read.commandLine().getOut();
        var answer = answer(file, new Given(Given.Origin.OPTIONS, typed(read)));
        if (Specs.asksForJson(read)) {
            new JsonAnswers(out).write(answer);
        } else {
            ListedAnswers.write(out, answer);
        }
        return Status.DONE;
    }

    private Answer answer(Path file, Given given) {
        try {
            return calculation.answer(file, given);
        } catch (OutOfRange outside) {
            throw new Refused(Given.sentence(outside) + " Nothing was worked out.");
        }
    }

    private Map<String, String> typed(CommandSpec read) {
        var typed = new HashMap<String, String>();
        for (var input : calculation.inputs()) {
            Object value = read.findOption("--" + input.name()).getValue();
            if (value instanceof List<?> values) {
                typed.put(input.name(), values.stream().map(String::valueOf).collect(Collectors.joining(";")));
            } else if (value != null) {
                typed.put(input.name(), value.toString());
            }
        }
        return typed;
    }
}
