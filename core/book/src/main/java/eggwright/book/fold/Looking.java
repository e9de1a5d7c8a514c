package eggwright.book.fold;

import eggwright.book.entry.Finding;
import eggwright.book.entry.LookSort;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Scope;
import eggwright.book.entry.SecondLookAsked;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.Fate;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.LookedOver;
import eggwright.book.picture.SecondLook;
import java.util.ArrayList;
import java.util.List;

/** Looks at the lamp, and second looks that were asked for. */
final class Looking {
    private final Loads loads;
    private final Pools pools;
    private final Doubts doubts;
    private final List<LookedOver> looks = new ArrayList<>();

    Looking(Loads loads, Pools pools, Doubts doubts) {
        this.loads = loads;
        this.pools = pools;
        this.doubts = doubts;
    }

    List<LookedOver> looks() {
        return looks;
    }

    void look(Effective entry, Looked it) {
        var named = loads.named(entry, it.scope());
        if (named.isEmpty()) {
            return;
        }
        var about = it.scope();
        var meant = pools.in(it.scope());
        int held = pools.most(meant);
        int day = Loads.day(named.getFirst(), entry);
        int since = Math.max(0, Math.min(day, named.getFirst().lastLookDay()));
        for (var load : named) {
            var taken = new LookTaken(entry.id(), entry.at(), day, held, it);
            (it.sort() == LookSort.SECOND_BLIND ? load.secondLooksTaken : load.looks).add(taken);
        }
        var counted = it.countedBefore();
        if (counted != null && (counted > held || counted < pools.least(meant))) {
            doubts.add(DiscrepancyKind.COUNT_DIFFERS, entry, about, counted, held);
        }
        int seen = it.removedUnsorted();
        for (var count : it.findings()) {
            seen += count.finding() == Finding.WRONG_END_UP ? 0 : count.seen();
        }
        int most = it.lookedAt() == null ? held : Math.min(held, it.lookedAt());
        if (seen > most) {
            doubts.add(DiscrepancyKind.MORE_SEEN_THAN_IN, entry, about, seen, most);
        }
        if (it.sort() != LookSort.SECOND_BLIND) {
            looks.addAll(Pools.lookedOver(meant, entry.id(), most, held));
        }
        var leaving = new ArrayList<Pools.Leaving>();
        for (var count : it.findings()) {
            leaving.add(new Pools.Leaving(fate(count.finding()), count.takenOut()));
        }
        leaving.add(new Pools.Leaving(Fate.REMOVED_UNSORTED, it.removedUnsorted()));
        for (var missing : pools.take(it.scope(), leaving, entry.id(), since, day)) {
            doubts.moreOutThanIn(entry, about, missing, held);
        }
    }

    void askAgain(Effective entry, SecondLookAsked it) {
        for (var tray : it.trays()) {
            for (var load : loads.named(entry, Scope.ofLoad(it.set(), tray))) {
                load.secondLooksAsked.add(new SecondLook(entry.id(), entry.at(), it.of()));
            }
        }
    }

    private static Fate fate(Finding finding) {
        return switch (finding) {
            case CLEAR -> Fate.CLEAR_UNOPENED;
            case BLOOD_RING -> Fate.BLOOD_RING;
            case DEAD -> Fate.DEAD;
            case CRACKED -> Fate.CRACKED;
            case ROT -> Fate.ROT;
            // Taken out although it may have lived: nobody knows what it was.
            case LIVE, DOUBTFUL, WRONG_END_UP -> Fate.REMOVED_UNSORTED;
        };
    }
}
