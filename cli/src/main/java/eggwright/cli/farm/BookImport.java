package eggwright.cli.farm;

import eggwright.book.name.FarmId;
import eggwright.book.store.EntryStore;
import eggwright.book.store.Outcome;
import eggwright.cli.answer.Answer;
import eggwright.cli.voice.Status;
import eggwright.wire.BookLines;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/** An exported book read into a folder: into a new one it is the same book, into its own it adds what is missing. */
final class BookImport {
    private static final int MOST_SHOWN = 50;

    private final String file;
    private final List<BookLines.Line.Whole> lines = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();
    private int beyond;

    private BookImport(String file) {
        this.file = file;
    }

    static int run(FarmCommand command, Path path) {
        var read = new BookImport(
                path.getFileName() == null
                        ? path.toString()
                        : path.getFileName().toString());
        read.read(path);
        return read.problems.isEmpty() ? read.keep(command) : read.refused(command);
    }

    private void read(Path path) {
        var number = new AtomicInteger();
        try (var each = Files.lines(path)) {
            each.forEach(line -> line(number.incrementAndGet(), line));
        } catch (NoSuchFileException missing) {
            problem(file + ": there is no such file. Look at its name, or at the folder.");
        } catch (IOException refused) {
            problem(unread(refused));
        } catch (UncheckedIOException refused) {
            problem(file
                    + ": this is not text in UTF-8, or could not be read to its end. Name a book that eggwright export"
                    + " wrote.");
        }
        if (problems.isEmpty() && lines.isEmpty()) {
            problem(file + ": this file holds no entries. Name a book that eggwright export wrote.");
        }
    }

    private String unread(IOException refused) {
        return refused instanceof CharacterCodingException
                ? file + ": this is not text in UTF-8. Name a book that eggwright export wrote."
                : file + ": this file could not be read (" + refused.getMessage() + ").";
    }

    private void line(int number, String text) {
        if (text.isBlank()) {
            return;
        }
        switch (BookLines.read(text)) {
            case BookLines.Line.Whole whole -> {
                var farm = whole.kept().entry().farm();
                if (!lines.isEmpty() && !farm().equals(farm)) {
                    problem(file + ", line " + number + ": this entry is of the farm \"" + farm.text()
                            + "\", those before are of \"" + farm().text() + "\". A book holds one farm.");
                } else {
                    lines.add(whole);
                }
            }
            case BookLines.Line.Malformed(var reason) -> problem(file + ", line " + number + ": " + reason);
        }
    }

    private FarmId farm() {
        return lines.getFirst().kept().entry().farm();
    }

    private void problem(String words) {
        if (problems.size() < MOST_SHOWN) {
            problems.add(words);
        } else {
            beyond++;
        }
    }

    private int refused(FarmCommand command) {
        problems.forEach(command.err()::println);
        if (beyond > 0) {
            command.err().println("And " + beyond + " more.");
        }
        command.err().println("Nothing was imported.");
        return Status.WRONG_INPUT;
    }

    private int keep(FarmCommand command) {
        try (var store = command.data().write(farm())) {
            return switch (store.bringInLines(lines)) {
                case EntryStore.Batch.NoneKept(var why) -> {
                    command.err()
                            .println("The book did not take the file: " + ImportCommand.words(why.getFirst())
                                    + ". Nothing was imported.");
                    yield Status.WRONG_INPUT;
                }
                case EntryStore.Batch.AllKept(var outcomes) -> {
                    long fresh = outcomes.stream()
                            .filter(Outcome.Added.class::isInstance)
                            .count();
                    Say.answer(
                            command,
                            Answer.of().with("new_entries", fresh).with("known_entries", outcomes.size() - fresh));
                    yield Status.DONE;
                }
            };
        }
    }
}
