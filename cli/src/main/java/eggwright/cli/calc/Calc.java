package eggwright.cli.calc;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;

/** The commands of the pocket calculator. */
public final class Calc {
    private Calc() {}

    /** Each by name, made when asked for. */
    public static Map<String, Supplier<CommandSpec>> commands() {
        var commands = new LinkedHashMap<String, Supplier<CommandSpec>>();
        CalcCommand.all()
                .forEach(calculation -> commands.put(calculation.name(), () -> CalcCommand.specOf(calculation)));
        FileCommand.all()
                .forEach(calculation -> commands.put(calculation.name(), () -> FileCommand.specOf(calculation)));
        return commands;
    }
}
