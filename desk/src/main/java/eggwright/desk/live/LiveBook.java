package eggwright.desk.live;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.fold.Ledger;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import eggwright.book.picture.Picture;
import eggwright.book.store.EntryStore;
import eggwright.book.store.Offered;
import eggwright.book.store.Outcome;
import java.time.Duration;
import java.time.InstantSource;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.random.RandomGenerator;

/**
 * The farm's book, open. One entry is written at a time; pages read the last picture without waiting.
 *
 * <p>Safe for many threads: pictures never change, and the ledger is only touched while this is locked.
 */
public final class LiveBook {
    private static final PersonName NOBODY_NAMED = new PersonName("desk");

    private final EntryStore store;
    private final Function<Entry, String> writer;
    private final ToIntFunction<Payload> versions;
    private final InstantSource clock;
    private final RandomGenerator random;
    private final Ledger ledger;
    private volatile Now now;
    /** Told of each new picture while the book is locked, so it has to be quick. */
    private volatile Consumer<Now> watcher = picture -> {};

    /**
     * A picture of the book.
     *
     * @param version grows with each entry; what was worked out from a picture holds as long as this does
     */
    public record Now(Picture picture, long version) {}

    /**
     * @param store the open book
     * @param writer entries as they are written
     * @param versions the version in which a payload is written
     * @param clock the desk's clock
     * @param random for ids; hard to guess
     */
    public LiveBook(
            EntryStore store,
            Function<Entry, String> writer,
            ToIntFunction<Payload> versions,
            InstantSource clock,
            RandomGenerator random) {
        this.store = store;
        this.writer = writer;
        this.versions = versions;
        this.clock = clock;
        this.random = random;
        this.ledger = Ledger.of(store.all());
        this.now = new Now(ledger.picture(), ledger.size());
    }

    /** Whose book this is. */
    public FarmId farm() {
        return store.farm();
    }

    /** Has each picture from now on shown to somebody who is quick to look, beginning with the one of this moment. */
    public synchronized void showTo(Consumer<Now> somebody) {
        watcher = somebody;
        somebody.accept(now);
    }

    private void show() {
        now = new Now(ledger.picture(), ledger.size());
        watcher.accept(now);
    }

    public Picture picture() {
        return now.picture();
    }

    /** The picture with its version. */
    public Now now() {
        return now;
    }

    /** The desk's clock, in the farm's time zone. */
    public ZonedDateTime time() {
        return clock.instant().atZone(zone());
    }

    /** The farm's time zone; Greenwich where none was noted. */
    public ZoneId zone() {
        return picture().farm().habits().clock().zoneOr(ZoneOffset.UTC);
    }

    /** A fresh id, to be put in a form when it is opened. */
    public EntryId freshId() {
        return EntryId.of(clock.millis(), random.nextLong(), random.nextLong());
    }

    /** Asks the ledger itself: trails, single entries, what was known before. The answer must not hold on to it. */
    public synchronized <T> T ask(Function<Ledger, T> question) {
        return question.apply(ledger);
    }

    /** What became of a note. */
    public sealed interface Noted {
        /** In the book. */
        record Kept(EntryId id) implements Noted {}

        /** It was in the book already; nothing changed. */
        record KeptBefore(EntryId id) implements Noted {}

        /** Not in the book. */
        record NotKept(eggwright.book.store.Refusal why) implements Noted {}
    }

    /** Notes an entry made at this desk. */
    public synchronized Noted note(
            EntryId id, OffsetDateTime happened, Payload payload, PersonName who, DeviceName device) {
        var entry = new Entry(
                id,
                store.farm(),
                happened,
                clock.instant().atOffset(offset(happened)),
                who,
                device,
                Origin.NOTED,
                payload,
                versions.applyAsInt(payload));
        return append(new Offered(entry, writer.apply(entry), Duration.ZERO));
    }

    private static ZoneOffset offset(OffsetDateTime like) {
        return like.getOffset();
    }

    /** Takes an entry made anywhere. */
    public synchronized Noted append(Offered offered) {
        return switch (store.append(offered, clock.instant())) {
            case Outcome.Added(var kept) -> {
                ledger.add(kept);
                show();
                yield new Noted.Kept(kept.entry().id());
            }
            case Outcome.KeptBefore(var kept) ->
                new Noted.KeptBefore(kept.entry().id());
            case Outcome.Refused(var why) -> new Noted.NotKept(why);
        };
    }

    /** Takes entries all together or not at all; gives the picture after. */
    public synchronized EntryStore.Batch appendAll(List<Offered> offered) {
        var batch = store.appendAll(offered, clock.instant());
        if (batch instanceof EntryStore.Batch.AllKept(var outcomes)) {
            for (var outcome : outcomes) {
                if (outcome instanceof Outcome.Added(var kept)) {
                    ledger.add(kept);
                }
            }
            show();
        }
        return batch;
    }

    /** Who notes where nobody has said a name. */
    public static PersonName nobodyNamed() {
        return NOBODY_NAMED;
    }
}
