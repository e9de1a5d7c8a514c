package eggwright.cli.farm;

import eggwright.cli.voice.Status;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;

/** A file of one JSON object a line, read to its end, with all that is wrong with it said at once. */
final class LineFile {
    private static final int MOST_SHOWN = 50;

    private final String file;
    /** What the person is to name instead, as "a book that eggwright export wrote". */
    private final String wanted;

    private final List<String> problems = new ArrayList<>();
    private int beyond;

    LineFile(Path path, String wanted) {
        this.file = path.getFileName() == null
                ? path.toString()
                : path.getFileName().toString();
        this.wanted = wanted;
    }

    /** Gives each line that is not blank, with its number. */
    void read(Path path, BiConsumer<Integer, String> each) {
        var number = new AtomicInteger();
        var found = new AtomicInteger();
        try (var lines = Files.lines(path)) {
            lines.forEach(line -> {
                int at = number.incrementAndGet();
                if (!line.isBlank()) {
                    found.incrementAndGet();
                    each.accept(at, line);
                }
            });
        } catch (NoSuchFileException missing) {
            problem(file + ": there is no such file. Look at its name, or at the folder.");
        } catch (IOException refused) {
            problem(
                    refused instanceof CharacterCodingException
                            ? file + ": this is not text in UTF-8. Name " + wanted + "."
                            : file + ": this file could not be read (" + refused.getMessage() + ").");
        } catch (UncheckedIOException refused) {
            problem(file + ": this is not text in UTF-8, or could not be read to its end. Name " + wanted + ".");
        }
        if (problems.isEmpty() && found.get() == 0) {
            problem(file + ": this file holds no entries. Name " + wanted + ".");
        }
    }

    /** Something in a line that cannot be taken. */
    void problem(int line, String reason) {
        problem(file + ", line " + line + ": " + reason);
    }

    private void problem(String words) {
        if (problems.size() < MOST_SHOWN) {
            problems.add(words);
        } else {
            beyond++;
        }
    }

    boolean isSound() {
        return problems.isEmpty();
    }

    /** Says all that is wrong. */
    int refused(FarmCommand command) {
        problems.forEach(command.err()::println);
        if (beyond > 0) {
            command.err().println("And " + beyond + " more.");
        }
        command.err().println("Nothing was imported.");
        return Status.WRONG_INPUT;
    }
}
