package eggwright.book.fold;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.LoadPlaced;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.Transferred;
import eggwright.book.entry.Weighed;
import eggwright.book.name.BasketName;
import eggwright.book.name.SetName;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.LookedOver;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import eggwright.book.picture.Place;
import eggwright.trade.BreakOutClass;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Folds one set, or several whose eggs were pooled, from setting to break-out. Settings are taken first whatever their
 * time, so that a count from before the set finds its trays and is shown as a discrepancy rather than lost.
 */
final class SetFold {
    private static final List<Fate> OPENED_AFTER_CLEARS = List.of(
            Fate.UNACCOUNTED,
            Fate.PIPPED_ALIVE_LEFT,
            Fate.DEAD,
            Fate.BLOOD_RING,
            Fate.REMOVED_UNSORTED,
            Fate.ROT,
            Fate.CRACKED);

    private final Pools pools = new Pools();
    private final Doubts doubts = new Doubts();
    private final SetStories stories = new SetStories();
    private final SortedMap<LoadRef, LoadState> loads = new TreeMap<>();
    private final List<LookedOver> looks = new ArrayList<>();

    private SetFold() {}

    static SetGroup fold(SortedSet<Effective> entries) {
        var fold = new SetFold();
        for (var entry : entries) {
            if (entry.payload() instanceof EggsSet it) {
                fold.set(entry, it);
            }
        }
        for (var entry : entries) {
            fold.take(entry);
        }
        return fold.picture();
    }

    private SetGroup picture() {
        var account = new EggAccount(pools.parcels(), pools.fates(), pools.atTheLamp(), looks);
        return new SetGroup(stories.pictures(loads, pools, account), account, doubts.found());
    }

    private void take(Effective entry) {
        switch (entry.payload()) {
            case EggsSet it -> stories.mention(it.set(), entry);
            case Looked it -> look(entry, it);
            case EggsMoved it -> move(entry, it);
            case LoadPlaced it -> place(entry, it);
            case Weighed it -> weigh(entry, it);
            case Transferred it -> transfer(entry, it);
            case TakenOff it -> takeOff(entry, it);
            case BrokenOut it -> breakOut(entry, it);
            default -> {
                // No other kind touches a set.
            }
        }
    }

    private void set(Effective entry, EggsSet it) {
        stories.start(it.set(), entry);
        for (var load : it.loads()) {
            var ref = new LoadRef(it.set(), load.tray());
            var state = loads.get(ref);
            if (state == null) {
                state = new LoadState(ref, stories.setOn(it.set()), entry.instant());
                loads.put(ref, state);
            } else {
                doubts.add(DiscrepancyKind.TRAY_TWICE, entry, ref, load.eggs(), state.eggsSet(), "");
            }
            if (state.places.isEmpty() && load.machine() != null) {
                state.places.add(new Place(entry.instant(), load.machine(), load.section(), load.position()));
            }
            fill(state, load);
        }
    }

    private void fill(LoadState state, LoadSet load) {
        var alike = new ArrayList<ParcelId>();
        int eggs = 0;
        for (var lot : load.lots()) {
            var id = new ParcelId(state.ref, state.parcels.size());
            var parcel = new Parcel(id, lot, state.setOn, load.machine(), load.section());
            state.parcels.add(parcel);
            pools.put(parcel);
            if (lot.canBeToldApart()) {
                pools.put(Pool.inSetter(Parcels.of(id), state.ref, lot.eggs()));
            } else {
                alike.add(id);
                eggs += lot.eggs();
            }
        }
        if (!alike.isEmpty()) {
            pools.put(Pool.inSetter(new Parcels(alike), state.ref, eggs));
        }
    }

    /** The loads that a count speaks of; none, with a discrepancy, where the book does not know them. */
    private List<LoadState> named(Effective entry, Scope scope) {
        var found = loads.values().stream()
                .filter(l -> scope.set() == null || l.ref.set().equals(scope.set()))
                .filter(l -> scope.tray() == null || l.ref.tray().equals(scope.tray()))
                .filter(l -> scope.basket() == null || l.baskets.contains(scope.basket()))
                .toList();
        if (scope.set() != null) {
            stories.mention(scope.set(), entry);
        } else {
            found.stream().map(l -> l.ref.set()).distinct().forEach(s -> stories.mention(s, entry));
        }
        if (found.isEmpty()) {
            doubts.add(DiscrepancyKind.UNKNOWN_LOAD, entry, Doubts.words(scope), 0, 0, "");
        } else if (entry.instant().isBefore(found.getFirst().startedAt)) {
            doubts.add(DiscrepancyKind.BEFORE_THE_SET, entry, Doubts.words(scope), 0, 0, "");
        }
        return found;
    }

    private static int day(LoadState load, LocalDate on) {
        return (int) ChronoUnit.DAYS.between(load.setOn, on);
    }

    private void look(Effective entry, Looked it) {
        var named = named(entry, it.scope());
        if (named.isEmpty()) {
            return;
        }
        var about = Doubts.words(it.scope());
        int held = pools.held(pools.in(it.scope()));
        int day = day(named.getFirst(), entry.at().toLocalDate());
        int since = Math.max(0, Math.min(day, named.getFirst().lastLookDay()));
        for (var load : named) {
            load.looks.add(new LookTaken(entry.id(), entry.at(), day, held, it));
        }
        if (it.countedBefore() != null && it.countedBefore() != held) {
            doubts.add(DiscrepancyKind.COUNT_DIFFERS, entry, about, it.countedBefore(), held, "");
        }
        int seen = it.removedUnsorted()
                + it.findings().stream()
                        .filter(f -> f.finding() != Finding.WRONG_END_UP)
                        .mapToInt(FindingCount::seen)
                        .sum();
        int most = it.lookedAt() == null ? held : Math.min(held, it.lookedAt());
        if (seen > most) {
            doubts.add(DiscrepancyKind.MORE_SEEN_THAN_IN, entry, about, seen, most, "");
        }
        looks.addAll(pools.lookedOver(it.scope(), entry.id(), most));
        var leaving = new ArrayList<Pools.Leaving>();
        for (var count : it.findings()) {
            leaving.add(new Pools.Leaving(fate(count.finding()), count.takenOut()));
        }
        leaving.add(new Pools.Leaving(Fate.REMOVED_UNSORTED, it.removedUnsorted()));
        for (var missing : pools.take(it.scope(), leaving, entry.id(), since, day)) {
            doubts.moreOutThanIn(entry, about, missing, held);
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

    private void move(Effective entry, EggsMoved it) {
        var from = new Scope(it.fromSet(), it.fromTray(), it.pen(), null, null);
        var named = named(entry, from);
        if (!it.toSet().equals(it.fromSet())) {
            stories.mention(it.toSet(), entry);
        }
        if (named.isEmpty()) {
            return;
        }
        var to = new LoadRef(it.toSet(), it.toTray());
        if (!loads.containsKey(to)) {
            var source = named.getFirst();
            var fresh = new LoadState(to, source.setOn, source.startedAt);
            fresh.places.addAll(source.places);
            fresh.looks.addAll(source.looks);
            if (it.machine() != null) {
                fresh.places.add(new Place(entry.instant(), it.machine(), it.section(), null));
            }
            loads.put(to, fresh);
        }
        int wanted = it.eggs() == null ? Integer.MAX_VALUE : it.eggs();
        int moved = pools.move(pools.in(from), wanted, to);
        if (it.eggs() != null && moved < wanted) {
            doubts.add(DiscrepancyKind.MORE_OUT_THAN_IN, entry, Doubts.words(from), wanted, moved, "moved");
        }
    }

    private void place(Effective entry, LoadPlaced it) {
        for (var load : named(entry, Scope.ofLoad(it.set(), it.tray()))) {
            load.places.add(new Place(entry.instant(), it.machine(), it.section(), it.position()));
        }
    }

    private void weigh(Effective entry, Weighed it) {
        for (var load : named(entry, Scope.ofLoad(it.set(), it.tray()))) {
            load.weighings.put(entry.id(), it);
        }
    }

    private void transfer(Effective entry, Transferred it) {
        for (var part : it.eggs()) {
            var scope = Scope.ofLoad(part.set(), part.tray());
            var named = named(entry, scope);
            if (named.isEmpty()) {
                continue;
            }
            var load = named.getFirst();
            var into = new TreeSet<BasketName>();
            if (part.basket() != null) {
                into.add(part.basket());
            }
            if (load.transferredAt == null) {
                load.transferredAt = entry.instant();
            }
            load.baskets.addAll(into);
            if (it.hatcher() != null) {
                load.places.add(new Place(entry.instant(), it.hatcher(), null, null));
            }
            int held = pools.held(p -> p.phase() == eggwright.book.picture.LoadPhase.IN_SETTER
                    && p.where().contains(load.ref));
            int wanted = part.eggs() == null ? held : part.eggs();
            int moved = pools.transfer(load.ref, wanted, into);
            if (moved < wanted) {
                doubts.add(DiscrepancyKind.MORE_OUT_THAN_IN, entry, Doubts.words(scope), wanted, held, "transferred");
            } else if (wanted < held
                    && it.eggs().stream().filter(t -> sameLoad(t, part)).count() == 1) {
                doubts.add(DiscrepancyKind.LEFT_AT_TRANSFER, entry, Doubts.words(scope), wanted, held, "");
            }
        }
    }

    private static boolean sameLoad(eggwright.book.entry.TransferOf one, eggwright.book.entry.TransferOf other) {
        return one.set().equals(other.set()) && one.tray().equals(other.tray());
    }

    private void takeOff(Effective entry, TakenOff it) {
        var named = named(entry, it.counted());
        if (named.isEmpty()) {
            return;
        }
        var about = Doubts.words(it.counted());
        int day = day(named.getFirst(), entry.at().toLocalDate());
        int held = pools.held(pools.in(it.counted()));
        var counts = List.of(
                new Pools.Leaving(Fate.SALEABLE, it.saleable()),
                new Pools.Leaving(Fate.CULLED, it.culled()),
                new Pools.Leaving(Fate.DEAD_IN_BASKET, it.deadInBasket()),
                new Pools.Leaving(Fate.PIPPED_ALIVE_LEFT, it.pippedAliveLeft()));
        for (var missing : pools.take(it.counted(), counts, entry.id(), day, day)) {
            int late = pools.takeLate(it.counted(), missing, entry.id(), day);
            if (late < missing.eggs()) {
                doubts.moreOutThanIn(entry, about, new Pools.Leaving(missing.fate(), missing.eggs() - late), held);
            }
        }
        if (it.pull() == Pull.LAST) {
            pools.takeAll(it.counted(), pools.in(it.counted()), Fate.UNACCOUNTED, entry.id(), day, day);
            for (var set : named.stream().map(l -> l.ref.set()).distinct().toList()) {
                stories.lastPull(set, entry);
            }
        }
    }

    private void breakOut(Effective entry, BrokenOut it) {
        var named = named(entry, it.scope());
        if (named.isEmpty()) {
            return;
        }
        var about = Doubts.words(it.scope());
        int day = day(named.getFirst(), entry.at().toLocalDate());
        var chosen = pools.departedFrom(it.scope());
        int clears = pools.departures().stream()
                .filter(chosen)
                .filter(d -> d.fate == Fate.CLEAR_UNOPENED)
                .mapToInt(d -> d.eggs)
                .sum();
        int wantedClears = it.clearsOpened() == null ? Math.min(clears, it.opened()) : it.clearsOpened();
        var opened = new ArrayList<Pools.Taken>(pools.open(chosen, Fate.CLEAR_UNOPENED, wantedClears));
        int left = it.opened() - eggs(opened);
        for (var fate : OPENED_AFTER_CLEARS) {
            var more = pools.open(chosen, fate, left);
            left -= eggs(more);
            opened.addAll(more);
        }
        var fromMachine = it.scope().look() == null ? pools.openHeld(it.scope(), left) : List.<Pools.Taken>of();
        int straight = eggs(fromMachine);
        left -= straight;
        opened.addAll(fromMachine);
        if (left > 0) {
            doubts.add(DiscrepancyKind.OPENED_MORE_THAN_THERE, entry, about, it.opened(), it.opened() - left, "");
        }
        nameAll(entry, it, opened, day, straight, about);
    }

    private void nameAll(Effective entry, BrokenOut it, List<Pools.Taken> opened, int day, int straight, String about) {
        int room = eggs(opened);
        int lampLeft = straight;
        for (var what : BreakOutClass.values()) {
            int named = Math.min(room, it.named(what));
            int lamp = Math.min(lampLeft, named);
            pools.name(opened, fate(what), named, entry.id(), day, lamp);
            room -= named;
            lampLeft -= lamp;
        }
        if (room > 0) {
            pools.name(opened, Fate.UNACCOUNTED, room, entry.id(), day, lampLeft);
            doubts.add(DiscrepancyKind.OPENED_WITHOUT_CLASS, entry, about, it.opened(), it.opened() - room, "");
        }
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

    private static int eggs(List<Pools.Taken> taken) {
        return taken.stream().mapToInt(Pools.Taken::eggs).sum();
    }

    static List<SetName> sets(SortedMap<LoadRef, LoadState> loads) {
        return loads.keySet().stream().map(LoadRef::set).distinct().toList();
    }
}
