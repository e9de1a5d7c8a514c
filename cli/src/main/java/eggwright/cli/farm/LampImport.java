package eggwright.cli.farm;

import eggwright.book.store.Offered;
import eggwright.wire.EntryCodec;
import eggwright.wire.ReadEntry;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * What a phone saved to a file because its desk was gone: its entries, one a line, as it would have sent them. They count
 * as received now, for now the book hears of them.
 */
final class LampImport {
    private final LineFile file;
    private final List<Offered> entries = new ArrayList<>();

    private LampImport(Path path) {
        file = new LineFile(path, "the file that the lamp page saved");
        file.read(path, this::line);
    }

    static int run(FarmCommand command, Path path) {
        var read = new LampImport(path);
        return read.file.isSound() ? read.keep(command) : read.file.refused(command);
    }

    private void line(int number, String text) {
        switch (EntryCodec.read(text)) {
            case ReadEntry.Whole(var entry) -> entries.add(new Offered(entry, text, Duration.ZERO));
            case ReadEntry.Malformed(var reason) -> file.problem(number, reason);
        }
    }

    private int keep(FarmCommand command) {
        // A new folder becomes that farm's: the phone may be all that is left of it.
        var farm = entries.getFirst().entry().farm();
        try (var store = command.data().write(farm)) {
            return ImportCommand.kept(command, store, store.appendAll(entries, Instant.now()));
        }
    }
}
