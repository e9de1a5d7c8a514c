package eggwright.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** What one command did: its exit status, and what it wrote to standard output and standard error. */
public record Run(int status, String out, String err) {
    /** Runs a command in this process. */
    public static Run of(String... words) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        int status = Main.run(
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8),
                words);
        return new Run(
                status,
                out.toString(StandardCharsets.UTF_8).replace("\r\n", "\n"),
                err.toString(StandardCharsets.UTF_8).replace("\r\n", "\n"));
    }

    /** The lines of the answer. */
    public java.util.List<String> lines() {
        return out.lines().toList();
    }
}
