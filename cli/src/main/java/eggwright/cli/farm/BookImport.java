package eggwright.cli.farm;

import eggwright.book.name.FarmId;
import eggwright.wire.BookLines;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** An exported book read into a folder: into a new one it is the same book, into its own it adds what is missing. */
final class BookImport {
    private final LineFile file;
    private final List<BookLines.Line.Whole> lines = new ArrayList<>();

    private BookImport(Path path) {
        file = new LineFile(path, "a book that eggwright export wrote");
        file.read(path, this::line);
    }

    static int run(FarmCommand command, Path path) {
        var read = new BookImport(path);
        return read.file.isSound() ? read.keep(command) : read.file.refused(command);
    }

    private void line(int number, String text) {
        switch (BookLines.read(text)) {
            case BookLines.Line.Whole whole -> {
                var farm = whole.kept().entry().farm();
                if (!lines.isEmpty() && !farm().equals(farm)) {
                    file.problem(
                            number,
                            "this entry is of the farm \"" + farm.text() + "\", those before are of \"" + farm().text()
                                    + "\". A book holds one farm.");
                } else {
                    lines.add(whole);
                }
            }
            case BookLines.Line.Malformed(var reason) -> file.problem(number, reason);
        }
    }

    private FarmId farm() {
        return lines.getFirst().kept().entry().farm();
    }

    private int keep(FarmCommand command) {
        try (var store = command.data().write(farm())) {
            return ImportCommand.kept(command, store, store.bringInLines(lines));
        }
    }
}
