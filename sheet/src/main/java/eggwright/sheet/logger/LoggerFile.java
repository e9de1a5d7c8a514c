package eggwright.sheet.logger;

import eggwright.sheet.problem.Problem;
import eggwright.sheet.table.TableRead;
import eggwright.sheet.table.TableReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A logger's file, which can be read more than once: first to be looked at, then to be taken. */
public final class LoggerFile {
    private static final int HEAD = 4;

    private final String name;
    private final Opening opening;
    /** Looked at once, however often it is asked for; absent until then. */
    private @Nullable Sampled sampled;

    private LoggerFile(String name, Opening opening) {
        this.name = name;
        this.opening = opening;
    }

    private interface Opening {
        InputStream open() throws IOException;
    }

    public static LoggerFile at(Path path) {
        var last = path.getFileName();
        return new LoggerFile(last == null ? path.toString() : last.toString(), () -> Files.newInputStream(path));
    }

    /** From bytes that came without a file, as from a page. */
    public static LoggerFile of(byte[] bytes, String name) {
        return new LoggerFile(name, () -> new java.io.ByteArrayInputStream(bytes));
    }

    public String name() {
        return name;
    }

    /** What came of opening it. */
    sealed interface Opened {
        record Rows(LoggerRows rows) implements Opened {}

        record Refused(List<Problem> problems) implements Opened {}
    }

    /** Its beginning, or why it cannot be read. */
    sealed interface Sampled {
        record Seen(Sample sample) implements Sampled {}

        record Refused(List<Problem> problems) implements Sampled {}
    }

    Sampled sample() {
        var known = sampled;
        if (known == null) {
            known = switch (open()) {
                case Opened.Refused(var problems) -> new Sampled.Refused(problems);
                case Opened.Rows(var rows) -> {
                    try (rows) {
                        var sample = Sample.of(rows);
                        var fault = rows.fault();
                        yield fault == null ? new Sampled.Seen(sample) : new Sampled.Refused(List.of(fault));
                    }
                }
            };
            sampled = known;
        }
        return known;
    }

    Opened open() {
        try {
            try (var head = opening.open()) {
                var first = head.readNBytes(HEAD);
                if (first.length == 0) {
                    return refused("is empty", "Name a file that a logger wrote.");
                }
                if (first.length > 1 && first[0] == 'P' && first[1] == 'K') {
                    return workbook();
                }
                if (first.length == HEAD && (first[0] & 0xFF) == 0xD0 && (first[1] & 0xFF) == 0xCF) {
                    return refused("is a workbook of the old kind (.xls)", "Open it and save it as .xlsx or as CSV.");
                }
            }
            return new Opened.Rows(CsvRows.of(opening.open(), name));
        } catch (NoSuchFileException missing) {
            return refused("is not there", "Name a file that is.");
        } catch (AccessDeniedException closed) {
            return refused("may not be read by you", "Change its permissions, or copy it to your own folder.");
        } catch (IOException unread) {
            return refused("could not be read: " + unread.getMessage(), "Copy it to this machine and try again.");
        }
    }

    private Opened workbook() throws IOException {
        try (var in = opening.open()) {
            return switch (TableReader.read(in.readNBytes(TableReader.MOST_BYTES + 1), name)) {
                case TableRead.Read(var table) -> new Opened.Rows(new XlsxRows(table));
                case TableRead.Refused(var problems, int beyond) -> new Opened.Refused(problems);
            };
        }
    }

    private Opened refused(String what, String right) {
        return new Opened.Refused(List.of(Problem.ofFile(name, what, right)));
    }
}
