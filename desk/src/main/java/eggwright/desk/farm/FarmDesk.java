package eggwright.desk.farm;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Payload;
import eggwright.book.name.DeviceName;
import eggwright.book.store.EntryStore;
import eggwright.desk.Setup;
import eggwright.desk.ledger.BookPages;
import eggwright.desk.ledger.DoubtWords;
import eggwright.desk.live.LiveBook;
import eggwright.desk.machine.MachinePages;
import eggwright.desk.note.NotePages;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.random.RandomGenerator;

/** The desk of one farm: which pages it has, and what they stand on. */
public final class FarmDesk {
    private static final Locale LANGUAGE = Locale.ENGLISH;

    private FarmDesk() {}

    /**
     * @param store the open book; stays open as long as the desk
     * @param writer entries as they are written
     * @param versions the version in which a payload is written
     * @param port 0 for any free one
     */
    public static Setup setup(
            EntryStore store,
            Function<Entry, String> writer,
            ToIntFunction<Payload> versions,
            InstantSource clock,
            RandomGenerator random,
            int port) {
        var book = new LiveBook(store, writer, versions, clock, random);
        var device = new DeviceName("desk");
        var doubts = new DoubtWords(LANGUAGE);
        return new Setup(
                () -> {
                    var name = book.picture().farm().habits().farmName();
                    return name.isEmpty() ? "Eggwright" : name;
                },
                LANGUAGE,
                port,
                List.of(
                        new FarmPages(book),
                        new NotePages(book, () -> device, () -> "", doubts::say),
                        new MachinePages(book),
                        new BookPages(book)));
    }
}
