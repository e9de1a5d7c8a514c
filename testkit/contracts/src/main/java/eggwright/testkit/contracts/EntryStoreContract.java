package eggwright.testkit.contracts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.store.EntryStore;
import eggwright.book.store.EntryStore.Batch;
import eggwright.book.store.Offered;
import eggwright.book.store.Outcome;
import eggwright.book.store.Refusal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * What {@link EntryStore} promises. A store's test extends this; what a store cannot promise it disables by name, with the
 * reason.
 */
public abstract class EntryStoreContract {
    private static final Instant NOW = Instant.parse("2027-04-14T00:01:02.345678Z");
    private static final Duration BEHIND = Duration.ofMillis(-1250);
    private static final int THREADS = 8;
    private static final int ENTRIES_OF_A_THREAD = 40;
    private static final int ENTRIES_IN_ALL = 60;

    private final List<EntryStore> open = new ArrayList<>();

    /** An empty book. */
    protected abstract EntryStore fresh() throws Exception;

    /** The same book, closed and opened again. */
    protected abstract EntryStore reopened(EntryStore store) throws Exception;

    /** The text of an entry as a device would send it. */
    protected abstract String write(Entry entry);

    @AfterEach
    final void closeAll() {
        open.forEach(EntryStore::close);
    }

    private EntryStore begin() throws Exception {
        var store = fresh();
        open.add(store);
        return store;
    }

    private Offered offer(Entry entry) {
        return new Offered(entry, write(entry), BEHIND);
    }

    private Offered remark(EntryStore store, int number) {
        return offer(Notes.remark(store.farm(), number, "Remark " + number));
    }

    @Test
    public void newBook_isEmpty() throws Exception {
        var store = begin();
        assertEquals(0, store.count());
        assertEquals(List.of(), store.all());
    }

    @Test
    public void append_keepsEntryInstantAndOffset() throws Exception {
        var store = begin();
        var kept = new Kept(Notes.remark(store.farm(), 1, "Remark 1"), NOW, BEHIND);
        assertEquals(new Outcome.Added(kept), store.append(remark(store, 1), NOW));
        assertEquals(List.of(kept), store.all());
    }

    @Test
    public void sameEntrySentAgain_isKeptOnce_whateverItsNotedTime() throws Exception {
        var store = begin();
        store.append(remark(store, 1), NOW);
        var again = Notes.again(Notes.remark(store.farm(), 1, "Remark 1"));
        var kept = new Kept(Notes.remark(store.farm(), 1, "Remark 1"), NOW, BEHIND);
        assertEquals(new Outcome.KeptBefore(kept), store.append(offer(again), NOW.plusSeconds(9)));
        assertEquals(List.of(kept), store.all());
    }

    @Test
    public void sameIdWithOtherContent_isRefused_andNothingIsOverwritten() throws Exception {
        var store = begin();
        var first = Notes.remark(store.farm(), 1, "Remark 1");
        var other = Notes.remark(store.farm(), 1, "Something else");
        store.append(offer(first), NOW);
        assertEquals(new Outcome.Refused(new Refusal.OtherContent(first, other)), store.append(offer(other), NOW));
        assertEquals(List.of(first), store.all().stream().map(Kept::entry).toList());
    }

    @Test
    public void entryOfAnotherFarm_isRefused() throws Exception {
        var store = begin();
        var elsewhere = new FarmId("elsewhere");
        assertEquals(
                new Outcome.Refused(new Refusal.OtherFarm(store.farm(), elsewhere)),
                store.append(offer(Notes.remark(elsewhere, 1, "Not ours")), NOW));
        assertEquals(0, store.count());
    }

    @Test
    public void batch_keepsAll_countingWhatWasThere() throws Exception {
        var store = begin();
        store.append(remark(store, 2), NOW);
        var batch = store.appendAll(List.of(remark(store, 1), remark(store, 2), remark(store, 1)), NOW);
        var outcomes = assertInstanceOf(Batch.AllKept.class, batch).outcomes();
        assertInstanceOf(Outcome.Added.class, outcomes.get(0));
        assertInstanceOf(Outcome.KeptBefore.class, outcomes.get(1));
        assertInstanceOf(Outcome.KeptBefore.class, outcomes.get(2));
        assertEquals(2, store.count());
    }

    @Test
    public void batch_keepsNone_whenOneIsRefused() throws Exception {
        var store = begin();
        store.append(remark(store, 1), NOW);
        var batch = store.appendAll(
                List.of(
                        remark(store, 2),
                        offer(Notes.remark(store.farm(), 1, "Something else")),
                        offer(Notes.remark(new FarmId("elsewhere"), 3, "Not ours")),
                        remark(store, 4)),
                NOW);
        assertEquals(2, assertInstanceOf(Batch.NoneKept.class, batch).why().size());
        assertEquals(1, store.count());
        assertInstanceOf(Outcome.Added.class, store.append(remark(store, 2), NOW));
    }

    @Test
    public void emptyBatch_isKept() throws Exception {
        assertEquals(new Batch.AllKept(List.of()), begin().appendAll(List.of(), NOW));
    }

    @Test
    public void entries_comeInTheOrderReceived_andAfterAnyCount() throws Exception {
        var store = begin();
        for (int number : List.of(3, 1, 2)) {
            store.append(remark(store, number), NOW);
        }
        assertEquals(List.of("Remark 3", "Remark 1", "Remark 2"), texts(store.all()));
        assertEquals(List.of("Remark 2"), texts(store.after(2)));
        assertEquals(List.of(), store.after(3));
    }

    private static List<String> texts(List<Kept> kept) {
        return kept.stream()
                .map(k -> ((eggwright.book.entry.Remarked) k.entry().payload()).text())
                .toList();
    }

    @Test
    public void receivedText_comesBackCharacterForCharacter() throws Exception {
        var store = begin();
        var entry = Notes.remark(store.farm(), 1, "Küken, 雉 🥚 and \"quotes\"");
        var written = " " + write(entry) + "\n ";
        store.append(new Offered(entry, written, Duration.ZERO), NOW);
        var found = new ArrayList<String>();
        store.eachWritten((kept, text) -> found.add(text));
        assertEquals(List.of(written), found);
    }

    @Test
    public void manyThreadsWithTheSameEntries_keepEachOnce() throws Exception {
        var store = begin();
        try (var threads = Executors.newFixedThreadPool(THREADS)) {
            var work = IntStream.range(0, THREADS)
                    .mapToObj(t -> (Callable<List<EntryId>>) () -> appendSome(store, new SplittableRandom(t)))
                    .toList();
            var added = new ArrayList<EntryId>();
            for (var each : threads.invokeAll(work)) {
                added.addAll(each.get());
            }
            assertEquals(added.size(), new TreeSet<>(added).size());
            assertEquals(
                    new TreeSet<>(added),
                    new TreeSet<>(store.all().stream().map(k -> k.entry().id()).toList()));
            assertEquals(added.size(), store.count());
        }
    }

    private List<EntryId> appendSome(EntryStore store, SplittableRandom random) {
        var added = new ArrayList<EntryId>();
        for (int i = 0; i < ENTRIES_OF_A_THREAD; i++) {
            if (store.append(remark(store, random.nextInt(ENTRIES_IN_ALL)), NOW) instanceof Outcome.Added(var kept)) {
                added.add(kept.entry().id());
            }
        }
        return added;
    }

    @Test
    public void entries_surviveClosing() throws Exception {
        var store = fresh();
        store.append(remark(store, 1), NOW);
        store.append(remark(store, 2), NOW);
        var before = store.all();
        var again = reopened(store);
        open.add(again);
        assertEquals(before, again.all());
        assertInstanceOf(Outcome.KeptBefore.class, again.append(remark(again, 1), NOW));
        assertInstanceOf(Outcome.Added.class, again.append(remark(again, 3), NOW));
    }
}
