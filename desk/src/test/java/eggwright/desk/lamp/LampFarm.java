package eggwright.desk.lamp;

import eggwright.book.entry.Kept;
import eggwright.book.fold.Effective;
import eggwright.book.fold.Ledger;
import eggwright.book.name.EntryId;
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
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
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
    private Desk desk;

    private LampFarm(MemoryEntryStore store) {
        this.store = store;
        this.invented = store.all().stream().map(k -> k.entry().id()).collect(Collectors.toSet());
        this.desk = start(0);
        this.port = desk.address().getPort();
    }

    static LampFarm open() {
        var season = DemoSeason.of(Instant.now().truncatedTo(ChronoUnit.DAYS).plus(12, ChronoUnit.HOURS), ZONE);
        var store = new MemoryEntryStore(season.farm());
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
                InstantSource.system(),
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
