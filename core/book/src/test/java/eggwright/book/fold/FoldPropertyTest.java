package eggwright.book.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.SeasonOfSlips;
import eggwright.book.entry.Kept;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SetPicture;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every book, whatever was noted and in whatever order it came. */
class FoldPropertyTest {
    private static final int MOST_AT_ONCE = 24;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, Integer.getInteger("eggwright.seeds", 40));
    }

    /** One by one, in handfuls, twice over, latest first: after each arrival as if all had been there from the start. */
    @ParameterizedTest
    @MethodSource("seeds")
    void ledger_isTheFoldOfAllItsEntries_afterEachArrival(long seed) {
        var random = new Random(seed);
        var entries = new ArrayList<>(SeasonOfSlips.of(seed).entries());
        if (seed % 3 == 0) {
            Collections.reverse(entries);
        } else {
            Collections.shuffle(entries, random);
        }
        var ledger = new Ledger();
        var here = new ArrayList<Kept>();
        while (here.size() < entries.size()) {
            int more = Math.min(entries.size() - here.size(), 1 + random.nextInt(MOST_AT_ONCE));
            var arriving = entries.subList(here.size(), here.size() + more);
            here.addAll(arriving);
            if (random.nextBoolean()) {
                arriving.forEach(ledger::add);
            } else {
                ledger.addAll(arriving);
            }
            ledger.add(here.get(random.nextInt(here.size())));
            assertEquals(Ledger.of(here).picture(), ledger.picture(), "seed " + seed + ", " + here.size() + " entries");
        }
        assertEquals(SeasonOfSlips.of(seed).picture(), ledger.picture(), "seed " + seed);
    }

    /** Pictures that were given before stay as they were. */
    @ParameterizedTest
    @MethodSource("seeds")
    void picture_neverChanges_whenFurtherEntriesCome(long seed) {
        var entries = SeasonOfSlips.of(seed).entries();
        var ledger = Ledger.of(entries.subList(0, entries.size() / 2));
        var before = ledger.picture();
        entries.forEach(ledger::add);
        assertEquals(Ledger.of(entries.subList(0, entries.size() / 2)).picture(), before, "seed " + seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void asOf_isTheFoldOfWhatHadCome(long seed) {
        var entries = SeasonOfSlips.of(seed).entries();
        var then = entries.get(new Random(seed).nextInt(entries.size())).received();
        var known = entries.stream().filter(e -> !e.received().isAfter(then)).toList();
        assertEquals(Ledger.of(known).picture(), Ledger.of(entries).asOf(then).picture(), "seed " + seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void fates_addUpToTheEggsSet_atEveryGrain(long seed) {
        var picture = SeasonOfSlips.of(seed).picture();
        assertEquals(
                picture.sets().values().stream().mapToInt(s -> s.eggsSet()).sum(),
                picture.accounts().stream().mapToInt(EggAccount::eggsSet).sum(),
                "seed " + seed);
        for (var account : picture.accounts()) {
            for (var fates : List.of(account.fates(), account.atTheLamp())) {
                assertTrue(fates.stream().allMatch(f -> f.eggs() > 0), "seed " + seed);
                assertEquals(
                        account.eggsSet(),
                        fates.stream().mapToInt(FateCount::eggs).sum(),
                        "seed " + seed);
                fits(account, fates, "seed " + seed, Parcel::id);
                fits(account, fates, "seed " + seed, p -> p.id().load());
                fits(account, fates, "seed " + seed, p -> p.id().load().set());
                fits(account, fates, "seed " + seed, p -> String.valueOf(p.lot().pen()));
            }
        }
    }

    /**
     * Of each load, set, pen: what is known of its eggs alone is no more than its eggs, and with what is only known
     * together with others' no less. The same of every two of them.
     */
    private static void fits(EggAccount account, List<FateCount> fates, String where, Function<Parcel, Object> key) {
        var groups = account.parcels().values().stream().collect(Collectors.groupingBy(key)).values().stream()
                .toList();
        for (var one : groups) {
            for (var other : groups) {
                var both = new HashSet<ParcelId>();
                one.forEach(p -> both.add(p.id()));
                other.forEach(p -> both.add(p.id()));
                int eggs = account.parcels().values().stream()
                        .filter(p -> both.contains(p.id()))
                        .mapToInt(Parcel::eggs)
                        .sum();
                assertTrue(alone(fates, both) <= eggs, where + ": more fates than eggs of " + both);
                assertTrue(touching(fates, both) >= eggs, where + ": fewer fates than eggs of " + both);
            }
        }
    }

    private static int alone(List<FateCount> fates, Set<ParcelId> eggs) {
        return fates.stream()
                .filter(f -> eggs.containsAll(f.of().ids()))
                .mapToInt(FateCount::eggs)
                .sum();
    }

    private static int touching(List<FateCount> fates, Set<ParcelId> eggs) {
        return fates.stream()
                .filter(f -> f.of().ids().stream().anyMatch(eggs::contains))
                .mapToInt(FateCount::eggs)
                .sum();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void eggsNow_ofAllLoads_areTheEggsStillIn_orAreNotSaid(long seed) {
        var picture = SeasonOfSlips.of(seed).picture();
        for (var account : picture.accounts()) {
            int stillIn = stillIn(account);
            int said = 0;
            var allSaid = true;
            for (var set : setsOf(picture, account)) {
                for (var load : set.loads().values()) {
                    var now = load.eggsNow();
                    if (now == null) {
                        allSaid = false;
                    } else {
                        said += now;
                        assertTrue(now >= 0, "seed " + seed);
                        assertTrue(now == 0 || load.phase() != LoadPhase.OUT, "seed " + seed + " " + load.ref());
                    }
                }
            }
            assertTrue(said <= stillIn, "seed " + seed);
            assertTrue(!allSaid || said == stillIn, "seed " + seed);
        }
    }

    private static int stillIn(EggAccount account) {
        return account.fates().stream()
                .filter(f -> f.by() == null)
                .mapToInt(FateCount::eggs)
                .sum();
    }

    private static List<SetPicture> setsOf(Picture picture, EggAccount account) {
        return picture.sets().values().stream()
                .filter(s -> s.account().equals(account))
                .toList();
    }
}
