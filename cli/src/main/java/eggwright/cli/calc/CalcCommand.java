package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.answer.Shown;
import eggwright.cli.answer.TableAnswers;
import eggwright.cli.answer.Value;
import eggwright.cli.voice.Refused;
import eggwright.cli.voice.Specs;
import eggwright.cli.voice.Status;
import eggwright.units.OutOfRange;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Runs one calculation on what was typed, or on each row of a file. */
public final class CalcCommand implements Callable<Integer> {
    private static final String ROWS = "--rows";

    private final Calculation calculation;
    private @Nullable CommandSpec spec;

    private CalcCommand(Calculation calculation) {
        this.calculation = calculation;
    }

    /** The command of a calculation, with its options. */
    static CommandSpec specOf(Calculation calculation) {
        var command = new CalcCommand(calculation);
        var spec = Specs.of(calculation.name(), calculation.about(), command, calculation.example());
        for (var input : calculation.inputs()) {
            switch (input.need()) {
                case NEEDED, OPTIONAL -> spec.addOption(option(input));
                case SAID_OR_NOT -> spec.addOption(saidOrNot(input));
                case NEEDED_AS_A_WORD ->
                    spec.addPositional(PositionalParamSpec.builder()
                            .paramLabel(input.placeholder())
                            .description(input.about())
                            .type(List.class)
                            .auxiliaryTypes(String.class)
                            .arity("0..*")
                            .build());
            }
        }
        spec.addOption(OptionSpec.builder(ROWS)
                .paramLabel("FILE.csv")
                .type(Path.class)
                .description("work it out for each row of a file: columns named as the options, empty means not given; "
                        + "row 1 is the header")
                .build());
        spec.addOption(Specs.json("one object; with --rows one a line"));
        command.spec = spec;
        return spec;
    }

    private static OptionSpec option(Input input) {
        return OptionSpec.builder("--" + input.name())
                .paramLabel(input.placeholder())
                .type(String.class)
                .description(described(input))
                .build();
    }

    private static OptionSpec saidOrNot(Input input) {
        return OptionSpec.builder("--" + input.name())
                .type(boolean.class)
                .arity("0")
                .description(described(input))
                .build();
    }

    /** picocli reads a per cent sign as the start of a format. */
    private static String described(Input input) {
        return input.about().replace("%", "%%");
    }

    @Override
    public Integer call() {
        var read = java.util.Objects.requireNonNull(spec);
        var out = read.commandLine().getOut();
        Path rows = read.findOption(ROWS).getValue();
        var typed = typed(read);
        if (rows == null) {
            var answer = answer(new Given(Given.Origin.OPTIONS, typed));
            if (Specs.asksForJson(read)) {
                new JsonAnswers(out).write(answer);
            } else {
                TableAnswers.write(out, answer);
            }
            return Status.DONE;
        }
        if (!typed.isEmpty()) {
            throw new Refused("--rows takes every value from the file, but --"
                    + typed.keySet().iterator().next()
                    + " is given too. Nothing was worked out. Leave out one of them.");
        }
        return overRows(new Rows(rows, calculation.inputs()), out, Specs.asksForJson(read));
    }

    private Map<String, String> typed(CommandSpec read) {
        var typed = new HashMap<String, String>();
        for (var input : calculation.inputs()) {
            String text = switch (input.need()) {
                case NEEDED, OPTIONAL -> read.findOption("--" + input.name()).getValue();
                case SAID_OR_NOT -> {
                    Boolean said = read.findOption("--" + input.name()).getValue();
                    yield Boolean.TRUE.equals(said) ? Given.YES : null;
                }
                case NEEDED_AS_A_WORD -> {
                    List<String> words = read.positionalParameters().getFirst().getValue();
                    yield words == null ? null : String.join(" ", words);
                }
            };
            if (text != null) {
                typed.put(input.name(), text);
            }
        }
        return typed;
    }

    private int overRows(Rows rows, PrintWriter out, boolean inJson) {
        var bad = new ArrayList<Long>(1);
        RowWriter writer = inJson ? new JsonAnswers(out)::write : new Table(out)::write;
        rows.each((number, row) -> {
            Answer answer;
            try {
                answer = switch (row) {
                    case Rows.Row.Read(Given given) -> answer(given);
                    case Rows.Row.Unread(String why) -> throw new Refused(why);
                };
            } catch (Refused refused) {
                if (bad.isEmpty()) {
                    bad.add(number);
                }
                answer = Answer.of().with("row", number).with("error", String.valueOf(refused.getMessage()));
            }
            writer.write(answer);
        });
        return bad.isEmpty() ? Status.DONE : Status.NO;
    }

    private interface RowWriter {
        void write(Answer answer);
    }

    private Answer answer(Given given) {
        try {
            return calculation.answer(given);
        } catch (OutOfRange outside) {
            throw new Refused(Given.sentence(outside));
        }
    }

    /** Answers under headings, which are written again only where the answers change their shape. */
    private static final class Table {
        private final PrintWriter out;
        private List<String> headings = List.of();

        Table(PrintWriter out) {
            this.out = out;
        }

        void write(Answer answer) {
            var keys = answer.fields().stream().map(Answer.Field::key).toList();
            if (keys.equals(List.of("row", "error"))) {
                out.println(answer.fields().stream()
                        .map(field -> (field.value() instanceof Value.Whole ? "Row " : "") + Shown.text(field.value()))
                        .collect(Collectors.joining(": ")));
                return;
            }
            if (!keys.equals(headings)) {
                headings = keys;
                TableAnswers.heading(out, keys);
            }
            TableAnswers.line(
                    out,
                    answer.fields().stream()
                            .map(Answer.Field::value)
                            .map(Shown::text)
                            .toList(),
                    keys);
        }
    }

    /** Every calculation, in the order of help. */
    static Stream<Calculation> all() {
        return Stream.of(
                new IntervalCalculation(),
                new AgreementCalculation(),
                new AccuracyCalculation(),
                new PredictCalculation(),
                new DoubleSampleCalculation(),
                new DatesCalculation(),
                new SpeciesCalculation(),
                new HumidityCalculation(),
                new WetBulbCalculation(),
                new SaturationCalculation(),
                new AtmosphereCalculation(),
                new SweatingCalculation(),
                new EggCalculation(),
                new ConductanceCalculation(),
                new LossCalculation());
    }
}
