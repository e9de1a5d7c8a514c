package eggwright.desk.farm;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.Picture;
import eggwright.book.store.Offered;
import eggwright.desk.Desk;
import eggwright.invented.DemoSeason;
import eggwright.testkit.contracts.MemoryBuyerStore;
import eggwright.testkit.contracts.MemoryEntryStore;
import eggwright.wire.EntryCodec;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.SplittableRandom;

/** The desk of the invented farm on one fixed day in mid-season. */
public final class DemoDesk {
    public static final ZoneId ZONE = ZoneId.of("America/Chicago");
    public static final Instant NOON = Instant.parse("2027-05-12T17:00:00Z");

    private DemoDesk() {}

    public static Desk open() {
        var season = DemoSeason.of(NOON, ZONE);
        var store = new MemoryEntryStore(season.farm());
        for (var kept : season.entries()) {
            store.append(
                    new Offered(kept.entry(), EntryCodec.write(kept.entry()), kept.clockOffset()), kept.received());
        }
        return Desk.open(FarmDesk.setup(
                store,
                new MemoryBuyerStore(),
                EntryCodec::write,
                EntryCodec::version,
                InstantSource.fixed(NOON),
                new SplittableRandom(1),
                ZONE,
                0));
    }

    public static Picture picture() {
        return Ledger.of(DemoSeason.of(NOON, ZONE).entries()).picture();
    }
}
