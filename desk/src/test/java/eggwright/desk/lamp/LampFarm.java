package eggwright.desk.lamp;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.fold.Effective;
import eggwright.book.fold.Ledger;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LoadRef;
import eggwright.book.store.Offered;
import eggwright.desk.Desk;
import eggwright.desk.farm.FarmDesk;
import eggwright.invented.DemoSeason;
import eggwright.testkit.contracts.MemoryBuyerStore;
import eggwright.testkit.contracts.MemoryEntryStore;
import eggwright.wire.EntryCodec;
import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** The desk of the invented farm, in mid-season now, for phones to speak with; it can be stopped and started again. */
final class LampFarm implements AutoCloseable {
    private static final ZoneId ZONE = ZoneId.of("UTC");

    private final MemoryEntryStore store;
    private final Set<EntryId> invented;
    private final int port;
    private volatile Duration later = Duration.ZERO;
    private final InstantSource clock = () -> Instant.now().plus(later);
    private Desk desk;

    private LampFarm(MemoryEntryStore store) {
        this.store = store;
        this.invented = store.all().stream().map(k -> k.entry().id()).collect(Collectors.toSet());
        this.desk = start(0);
        this.port = desk.address().getPort();
    }

    /** Something more in the book than the invented season: when, by whom, on what. */
    record More(Duration ago, String who, String device, Payload payload) {}

    /** A farm that has begun its book, and set nothing. */
    static LampFarm fresh() {
        return new LampFarm(new MemoryEntryStore(new FarmId("Larkfield")));
    }

    static LampFarm open(More... more) {
        var season = DemoSeason.of(Instant.now().truncatedTo(ChronoUnit.DAYS).plus(12, ChronoUnit.HOURS), ZONE);
        var store = new MemoryEntryStore(season.farm());
        var random = new SplittableRandom(7);
        for (var one : more) {
            var at = Instant.now().minus(one.ago()).truncatedTo(ChronoUnit.MILLIS);
            var entry = new Entry(
                    EntryId.of(at.toEpochMilli(), random.nextLong(), random.nextLong()),
                    season.farm(),
                    at.atOffset(ZoneOffset.UTC),
                    at.atOffset(ZoneOffset.UTC),
                    new PersonName(one.who()),
                    new DeviceName(one.device()),
                    Origin.NOTED,
                    one.payload(),
                    EntryCodec.version(one.payload()));
            store.append(new Offered(entry, EntryCodec.write(entry), Duration.ZERO), at);
        }
        for (var kept : season.entries()) {
            store.append(
                    new Offered(kept.entry(), EntryCodec.write(kept.entry()), kept.clockOffset()), kept.received());
        }
        return new LampFarm(store);
    }

    private Desk start(int port) {
        return Desk.open(FarmDesk.setup(
                store,
                new MemoryBuyerStore(),
                EntryCodec::write,
                EntryCodec::version,
                clock,
                new SplittableRandom(1),
                ZONE,
                port));
    }

    URI address() {
        return desk.address();
    }

    /** Each entry with when it came. */
    List<Kept> kept() {
        return store.all();
    }

    /** Whose book it is. */
    String name() {
        return store.farm().text();
    }

    /** The trays in the setter. */
    List<LoadRef> trays() {
        return Ledger.of(store.all()).picture().sets().values().stream()
                .flatMap(s -> s.loads().values().stream())
                .filter(l -> l.phase() == LoadPhase.IN_SETTER)
                .map(LoadPicture::ref)
                .toList();
    }

    /** Whether an entry came since this farm was opened for the test. */
    boolean isOfNow(Effective entry) {
        return !invented.contains(entry.id());
    }

    /** Time goes by at the desk. */
    void passes(Duration time) {
        later = later.plus(time);
    }

    /** The desk is gone. */
    void stop() {
        desk.close();
    }

    /** The desk is back under the address it had. */
    void startAgain() {
        desk = start(port);
    }

    @Override
    public void close() {
        desk.close();
    }
}
