package eggwright.desk.farm;

import eggwright.book.entry.Entry;
import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.Payload;
import eggwright.book.picture.Picture;
import eggwright.book.store.BuyerStore;
import eggwright.book.store.EntryStore;
import eggwright.climate.reading.ReadingStore;
import eggwright.desk.Reach;
import eggwright.desk.Setup;
import eggwright.desk.candler.CandlerPages;
import eggwright.desk.device.ArrivalPages;
import eggwright.desk.device.DevicePages;
import eggwright.desk.intake.FilePages;
import eggwright.desk.intake.SensorPages;
import eggwright.desk.joining.Devices;
import eggwright.desk.joining.DevicesInMemory;
import eggwright.desk.lamp.LampPages;
import eggwright.desk.ledger.BookPages;
import eggwright.desk.ledger.DoubtWords;
import eggwright.desk.link.LinkPages;
import eggwright.desk.live.LiveBook;
import eggwright.desk.machine.MachinePages;
import eggwright.desk.machine.NoReadings;
import eggwright.desk.machine.OutsidePages;
import eggwright.desk.note.NotePages;
import eggwright.desk.people.PeoplePages;
import eggwright.desk.rate.RateBook;
import eggwright.desk.rate.RatePages;
import eggwright.desk.today.TodayPages;
import eggwright.desk.who.Visitor;
import eggwright.intake.Incoming;
import eggwright.intake.file.ColumnsInMemory;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.message.Intake;
import eggwright.intake.sensor.Sensors;
import eggwright.intake.sensor.SensorsInMemory;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import java.util.random.RandomGenerator;

/** The desk of one farm: which pages it has, and what they stand on. */
public final class FarmDesk {
    private static final Locale LANGUAGE = Locale.ENGLISH;

    private FarmDesk() {}

    /**
     * Who stands around the desk.
     *
     * @param devices that have joined
     * @param reach who else can reach the desk
     * @param watcher is shown each picture of the book; has to be quick
     * @param incoming ways by which readings come in; empty for sensors that are forgotten with the desk
     */
    public record Company(Devices devices, Reach reach, Consumer<Picture> watcher, Optional<Incoming> incoming) {
        public Company(Devices devices, Reach reach, Consumer<Picture> watcher) {
            this(devices, reach, watcher, Optional.empty());
        }
    }

    /** A desk for this machine only, with nobody watching. */
    public static Setup setup(
            EntryStore store,
            BuyerStore buyers,
            Function<Entry, String> writer,
            ToIntFunction<Payload> versions,
            InstantSource clock,
            RandomGenerator random,
            ZoneId here,
            int port) {
        return setup(store, buyers, writer, versions, clock, random, here, port, alone(clock, random));
    }

    /** On this machine only, with nobody watching. */
    public static Company alone(InstantSource clock, RandomGenerator random) {
        var nobody = new Devices(new DevicesInMemory(), clock, random);
        return new Company(nobody, new Reach.ThisMachine(), picture -> {});
    }

    /** A desk of a farm without sensors. */
    public static Setup setup(
            EntryStore store,
            BuyerStore buyers,
            Function<Entry, String> writer,
            ToIntFunction<Payload> versions,
            InstantSource clock,
            RandomGenerator random,
            ZoneId here,
            int port,
            Company company) {
        return setup(store, buyers, new NoReadings(), writer, versions, clock, random, here, port, company);
    }

    /**
     * @param store the open book; stays open as long as the desk
     * @param buyers names behind buyer numbers, of the same book
     * @param readings of the farm's sensors; stays open as long as the desk
     * @param writer entries as they are written
     * @param versions the version in which a payload is written
     * @param here this machine's time zone; noted as the farm's where the book holds none, since without it every hour on
     *     the pages would be that of Greenwich
     * @param port 0 for any free one
     */
    public static Setup setup(
            EntryStore store,
            BuyerStore buyers,
            ReadingStore readings,
            Function<Entry, String> writer,
            ToIntFunction<Payload> versions,
            InstantSource clock,
            RandomGenerator random,
            ZoneId here,
            int port,
            Company company) {
        var book = new LiveBook(store, writer, versions, clock, random);
        noteZone(book, clock, here);
        book.showTo(now -> company.watcher().accept(now.picture()));
        var doubts = new DoubtWords(LANGUAGE);
        var chicks = new Chicks(book);
        var rates = new RateBook(book);
        var incoming = company.incoming().orElseGet(() -> forgotten(readings, clock, random));
        Supplier<String> farm = () -> {
            var name = book.picture().farm().habits().farmName();
            return name.isEmpty() ? "Eggwright" : name;
        };
        var outside = new OutsidePages(book, readings, LANGUAGE);
        return new Setup(
                farm,
                LANGUAGE,
                port,
                company.reach(),
                outside,
                List.of(
                        outside,
                        new TodayPages(book, (set, visit) -> chicks.range(set, Shown.words(visit))),
                        new SetPages(book, chicks),
                        new ForeseenPages(book),
                        new EggRoomPages(book),
                        new PenPages(book, rates),
                        new RatePages(book, rates),
                        new CandlerPages(book),
                        new SettingPages(book),
                        new NotePages(book, buyers, doubts::say),
                        new PeoplePages(book, buyers),
                        new MachinePages(book, readings),
                        new SensorPages(book, readings, incoming, company.reach(), port, LANGUAGE),
                        new FilePages(book, incoming, clock, random),
                        new BookPages(book),
                        new LampPages(book, LANGUAGE),
                        new LinkPages(book, company.reach()),
                        new ArrivalPages(company.devices()),
                        new DevicePages(company.devices(), company.reach(), farm, book::time)));
    }

    private static Incoming forgotten(ReadingStore readings, InstantSource clock, RandomGenerator random) {
        var sensors = new Sensors(new SensorsInMemory(), clock, random);
        return new Incoming(
                sensors, new Intake(sensors, readings, clock), new LoggerFiles(readings, new ColumnsInMemory()));
    }

    private static void noteZone(LiveBook book, InstantSource clock, ZoneId here) {
        var noted = book.ask(ledger -> ledger.inOrder().stream()
                .anyMatch(e -> e.payload() instanceof HabitsNoted habits && habits.timeZone() != null));
        if (!noted) {
            var zone = new HabitsNoted(null, here.getId(), null, null, null, null, null);
            book.note(
                    book.freshId(),
                    clock.instant().atZone(here).toOffsetDateTime(),
                    zone,
                    LiveBook.nobodyNamed(),
                    Visitor.DESK);
        }
    }
}
