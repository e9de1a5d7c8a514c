package eggwright.cli;

import eggwright.cli.voice.Status;
import eggwright.cli.voice.Voice;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Where the program begins, and where its parts are put together. */
public final class Main {
    private Main() {}

    /** Runs one command and leaves with its {@linkplain Status exit status}. */
    public static void main(String[] arguments) {
        var out = printer(FileDescriptor.out);
        var err = printer(FileDescriptor.err);
        int status = run(out, err, arguments);
        out.flush();
        err.flush();
        // Where all went well the JVM ends by itself, which spares it the log that leaving with a status looks for.
        if (status != Status.DONE) {
            System.exit(status);
        }
    }

    /**
     * Runs one command inside this process.
     *
     * @param out where the answer goes
     * @param err where messages go
     * @return one of {@link Status}
     */
    public static int run(PrintStream out, PrintStream err, String... arguments) {
        var voice = new Voice(
                new PrintWriter(out, false, StandardCharsets.UTF_8),
                new PrintWriter(err, true, StandardCharsets.UTF_8));
        var words = List.of(arguments);
        var line = Commands.lineFor(words)
                .setOut(voice.out())
                .setErr(voice.err())
                .setParameterExceptionHandler(voice::misread)
                .setExecutionExceptionHandler((fault, at, read) -> voice.failed(fault, at));
        int status = line.execute(arguments);
        voice.out().flush();
        voice.err().flush();
        return status;
    }

    private static PrintStream printer(FileDescriptor where) {
        return new PrintStream(
                new BufferedOutputStream(new FileOutputStream(where), 8192), false, StandardCharsets.UTF_8);
    }
}
