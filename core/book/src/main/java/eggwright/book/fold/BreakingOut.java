package eggwright.book.fold;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.Scope;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.Fate;
import eggwright.trade.BreakOutClass;
import java.util.ArrayList;
import java.util.List;

/** Eggs opened, and named by what they show. */
final class BreakingOut {
    private static final List<Fate> OPENED_AFTER_CLEARS = List.of(
            Fate.UNACCOUNTED,
            Fate.PIPPED_ALIVE_LEFT,
            Fate.DEAD,
            Fate.BLOOD_RING,
            Fate.REMOVED_UNSORTED,
            Fate.ROT,
            Fate.CRACKED);

    private final Loads loads;
    private final Pools pools;
    private final Opening opening;
    private final Doubts doubts;

    BreakingOut(Loads loads, Pools pools, Opening opening, Doubts doubts) {
        this.loads = loads;
        this.pools = pools;
        this.opening = opening;
        this.doubts = doubts;
    }

    void breakOut(Effective entry, BrokenOut it) {
        var named = loads.named(entry, it.scope());
        if (named.isEmpty()) {
            return;
        }
        var about = it.scope();
        int day = Loads.day(named.getFirst(), entry);
        int clears = opening.count(it.scope(), Fate.CLEAR_UNOPENED);
        int wantedClears = it.clearsOpened() == null ? Math.min(clears, it.opened()) : it.clearsOpened();
        int left = it.opened() - opening.open(it.scope(), Fate.CLEAR_UNOPENED, wantedClears);
        for (var fate : OPENED_AFTER_CLEARS) {
            left -= opening.open(it.scope(), fate, left);
        }
        if (it.scope().look() == null) {
            left -= opening.openHeld(pools, it.scope(), left, entry.id());
        }
        if (left > 0) {
            doubts.add(DiscrepancyKind.OPENED_MORE_THAN_THERE, entry, about, it.opened(), it.opened() - left);
        }
        nameAll(entry, it, day, about);
    }

    private void nameAll(Effective entry, BrokenOut it, int day, Scope about) {
        int room = opening.waiting();
        var named = new ArrayList<Pools.Leaving>();
        for (var what : BreakOutClass.values()) {
            int eggs = Math.min(room, it.named(what));
            if (eggs > 0) {
                named.add(new Pools.Leaving(fate(what), eggs));
                room -= eggs;
            }
        }
        if (room > 0) {
            named.add(new Pools.Leaving(Fate.UNACCOUNTED, room));
            doubts.add(DiscrepancyKind.OPENED_WITHOUT_CLASS, entry, about, it.opened(), it.opened() - room);
        }
        opening.name(named, entry.id(), day);
    }

    private static Fate fate(BreakOutClass what) {
        return switch (what) {
            case INFERTILE -> Fate.INFERTILE;
            case EARLY_DEAD -> Fate.EARLY_DEAD;
            case MID_DEAD -> Fate.MID_DEAD;
            case LATE_DEAD -> Fate.LATE_DEAD;
            case PIPPED_DEAD -> Fate.PIPPED_DEAD;
            case CONTAMINATED -> Fate.CONTAMINATED;
            case MALFORMED -> Fate.MALFORMED;
        };
    }
}
