package eggwright.desk.farm;

import eggwright.book.entry.Entry;
import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.Payload;
import eggwright.book.name.DeviceName;
import eggwright.book.picture.Picture;
import eggwright.book.store.BuyerStore;
import eggwright.book.store.EntryStore;
import eggwright.desk.Setup;
import eggwright.desk.candler.CandlerPages;
import eggwright.desk.ledger.BookPages;
import eggwright.desk.ledger.DoubtWords;
import eggwright.desk.live.LiveBook;
import eggwright.desk.machine.MachinePages;
import eggwright.desk.note.NotePages;
import eggwright.desk.people.PeoplePages;
import eggwright.desk.rate.RateBook;
import eggwright.desk.rate.RatePages;
import eggwright.desk.today.TodayPages;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.random.RandomGenerator;

/** The desk of one farm: which pages it has, and what they stand on. */
public final class FarmDesk {
    private static final Locale LANGUAGE = Locale.ENGLISH;

    private FarmDesk() {}

    /** The desk of a farm, with nobody watching. */
    public static Setup setup(
            EntryStore store,
            BuyerStore buyers,
            Function<Entry, String> writer,
            ToIntFunction<Payload> versions,
            InstantSource clock,
            RandomGenerator random,
            ZoneId here,
            int port) {
        return setup(store, buyers, writer, versions, clock, random, here, port, picture -> {});
    }

    /**
     * @param store the open book; stays open as long as the desk
     * @param buyers names behind buyer numbers, of the same book
     * @param writer entries as they are written
     * @param versions the version in which a payload is written
     * @param here this machine's time zone; noted as the farm's where the book holds none, since without it every hour on
     *     the pages would be that of Greenwich
     * @param port 0 for any free one
     * @param watcher is shown each picture of the book; has to be quick
     */
    public static Setup setup(
            EntryStore store,
            BuyerStore buyers,
            Function<Entry, String> writer,
            ToIntFunction<Payload> versions,
            InstantSource clock,
            RandomGenerator random,
            ZoneId here,
            int port,
            Consumer<Picture> watcher) {
        var book = new LiveBook(store, writer, versions, clock, random);
        var device = new DeviceName("desk");
        noteZone(book, clock, here, device);
        book.showTo(now -> watcher.accept(now.picture()));
        var doubts = new DoubtWords(LANGUAGE);
        var chicks = new Chicks(book);
        var rates = new RateBook(book);
        return new Setup(
                () -> {
                    var name = book.picture().farm().habits().farmName();
                    return name.isEmpty() ? "Eggwright" : name;
                },
                LANGUAGE,
                port,
                List.of(
                        new TodayPages(book, (set, visit) -> chicks.range(set, Shown.words(visit))),
                        new SetPages(book, chicks),
                        new ForeseenPages(book),
                        new EggRoomPages(book),
                        new PenPages(book, rates),
                        new RatePages(book, rates),
                        new CandlerPages(book),
                        new SettingPages(book),
                        new NotePages(book, buyers, device, doubts::say),
                        new PeoplePages(book, buyers),
                        new MachinePages(book),
                        new BookPages(book)));
    }

    private static void noteZone(LiveBook book, InstantSource clock, ZoneId here, DeviceName device) {
        var noted = book.ask(ledger -> ledger.inOrder().stream()
                .anyMatch(e -> e.payload() instanceof HabitsNoted habits && habits.timeZone() != null));
        if (!noted) {
            var zone = new HabitsNoted(null, here.getId(), null, null, null, null, null);
            book.note(
                    book.freshId(),
                    clock.instant().atZone(here).toOffsetDateTime(),
                    zone,
                    LiveBook.nobodyNamed(),
                    device);
        }
    }
}
