package eggwright.book.fold;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Finding;
import eggwright.book.entry.LoadPlaced;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.LookSort;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Scope;
import eggwright.book.entry.SecondLookAsked;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.TransferOf;
import eggwright.book.entry.Transferred;
import eggwright.book.entry.Weighed;
import eggwright.book.name.BasketName;
import eggwright.book.picture.Discrepancy.What;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.FarmClock;
import eggwright.book.picture.Fate;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.LookedOver;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import eggwright.book.picture.Place;
import eggwright.book.picture.SecondLook;
import eggwright.book.picture.WeighedAt;
import eggwright.trade.BreakOutClass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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

    private final Whereabouts where = new Whereabouts();
    private final Pools pools = new Pools(where);
    private final Opening opening = new Opening(where);
    private final Doubts doubts = new Doubts();
    private final SetStories stories = new SetStories();
    private final SortedMap<LoadRef, LoadState> loads = new TreeMap<>();
    private final List<LookedOver> looks = new ArrayList<>();

    private SetFold() {}

    /** @param entries in the order of the fold */
    static SetGroup fold(Iterable<Effective> entries) {
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
        var account = new EggAccount(where.parcels(), where.fates(), where.atTheLamp(), looks);
        return new SetGroup(stories.pictures(loads, where.pools(), account), account, doubts.found());
    }

    private void take(Effective entry) {
        switch (entry.payload()) {
            case EggsSet it -> stories.mention(it.set(), entry);
            case Looked it -> look(entry, it);
            case SecondLookAsked it -> askAgain(entry, it);
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
                doubts.add(
                        DiscrepancyKind.TRAY_TWICE,
                        entry,
                        Scope.ofLoad(ref.set(), ref.tray()),
                        load.eggs(),
                        state.eggsSet());
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
            where.put(parcel);
            if (lot.canBeToldApart()) {
                where.set(Parcels.of(id), state.ref, lot.eggs());
            } else {
                alike.add(id);
                eggs += lot.eggs();
            }
        }
        if (!alike.isEmpty()) {
            where.set(new Parcels(alike), state.ref, eggs);
        }
    }

    /** The loads that a count speaks of; none, with a discrepancy, where the book does not know them. */
    private List<LoadState> named(Effective entry, Scope scope) {
        var found = known(scope);
        if (scope.set() != null) {
            stories.mention(scope.set(), entry);
        } else {
            found.forEach(l -> stories.mention(l.ref.set(), entry));
        }
        if (found.isEmpty()) {
            doubts.add(DiscrepancyKind.UNKNOWN_LOAD, entry, scope);
        } else if (entry.instant().isBefore(found.getFirst().startedAt)) {
            doubts.add(DiscrepancyKind.BEFORE_THE_SET, entry, scope);
        }
        return found;
    }

    private List<LoadState> known(Scope scope) {
        if (scope.set() != null && scope.tray() != null) {
            var load = loads.get(new LoadRef(scope.set(), scope.tray()));
            return load == null || !isIn(load, scope) ? List.of() : List.of(load);
        }
        var found = new ArrayList<LoadState>();
        for (var load : loads.values()) {
            if (isIn(load, scope)) {
                found.add(load);
            }
        }
        return found;
    }

    private static boolean isIn(LoadState load, Scope scope) {
        return (scope.set() == null || load.ref.set().equals(scope.set()))
                && (scope.basket() == null || load.baskets.contains(scope.basket()));
    }

    private static int day(LoadState load, Effective entry) {
        return FarmClock.day(load.setOn, entry.at().toLocalDate());
    }

    private void look(Effective entry, Looked it) {
        var named = named(entry, it.scope());
        if (named.isEmpty()) {
            return;
        }
        var about = it.scope();
        var meant = pools.in(it.scope());
        int held = pools.most(meant);
        int day = day(named.getFirst(), entry);
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

    private void askAgain(Effective entry, SecondLookAsked it) {
        for (var tray : it.trays()) {
            for (var load : named(entry, Scope.ofLoad(it.set(), tray))) {
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
        if (!stories.hasBegun(it.toSet())) {
            doubts.add(DiscrepancyKind.UNKNOWN_LOAD, entry, Scope.ofLoad(it.toSet(), it.toTray()));
        }
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
        var meant = pools.stillIn(from);
        if (it.eggs() == null) {
            pools.moveAll(meant, to);
            return;
        }
        int there = pools.most(meant);
        if (it.eggs() > there) {
            doubts.add(DiscrepancyKind.MORE_OUT_THAN_IN, entry, from, it.eggs(), there, What.Gone.MOVED);
        }
        if (it.eggs() >= pools.least(meant) && Named.areWhole(meant)) {
            pools.moveAll(meant, to);
        } else {
            pools.move(meant, Math.min(it.eggs(), there), to);
        }
    }

    private void place(Effective entry, LoadPlaced it) {
        for (var load : named(entry, Scope.ofLoad(it.set(), it.tray()))) {
            load.places.add(new Place(entry.instant(), it.machine(), it.section(), it.position()));
        }
    }

    private void weigh(Effective entry, Weighed it) {
        for (var load : named(entry, Scope.ofLoad(it.set(), it.tray()))) {
            load.weighings.put(entry.id(), new WeighedAt(entry.at(), it));
        }
    }

    private void transfer(Effective entry, Transferred it) {
        var parts = new LinkedHashMap<LoadRef, List<TransferOf>>();
        for (var part : it.eggs()) {
            parts.computeIfAbsent(new LoadRef(part.set(), part.tray()), r -> new ArrayList<>())
                    .add(part);
        }
        for (var load : parts.entrySet()) {
            var scope = Scope.ofLoad(load.getKey().set(), load.getKey().tray());
            var named = named(entry, scope);
            if (!named.isEmpty()) {
                arrive(entry, it, named.getFirst(), load.getValue());
                transfer(entry, scope, load.getValue(), day(named.getFirst(), entry));
            }
        }
    }

    private static void arrive(Effective entry, Transferred it, LoadState load, List<TransferOf> parts) {
        if (load.transferredAt == null) {
            load.transferredAt = entry.instant();
        }
        load.baskets.addAll(baskets(parts));
        if (it.hatcher() != null) {
            load.places.add(new Place(entry.instant(), it.hatcher(), null, null));
        }
    }

    private static SortedSet<BasketName> baskets(List<TransferOf> parts) {
        var baskets = new TreeSet<BasketName>();
        for (var part : parts) {
            if (part.basket() != null) {
                baskets.add(part.basket());
            }
        }
        return baskets;
    }

    /** One load into its baskets: what was counted first; the rest into the others, of which only the sum is known. */
    private void transfer(Effective entry, Scope load, List<TransferOf> parts, int day) {
        var counted = parts.stream().filter(t -> t.eggs() != null).toList();
        var uncounted = parts.stream().filter(t -> t.eggs() == null).toList();
        int left = counted.size();
        int sum = 0;
        int held = pools.most(pools.inSetter(load));
        for (var part : counted) {
            int eggs = part.eggs() == null ? 0 : part.eggs();
            sum += eggs;
            left--;
            var meant = pools.inSetter(load);
            int there = pools.most(meant);
            var isLast = left == 0 && uncounted.isEmpty();
            if (isLast && eggs <= there && eggs >= pools.least(meant)) {
                pools.transferCounted(meant, eggs, baskets(List.of(part)), entry.instant());
            } else {
                pools.transfer(meant, Math.min(eggs, there), baskets(List.of(part)), entry.instant());
            }
        }
        pools.closePulled(entry.id(), day);
        if (!uncounted.isEmpty()) {
            pools.transferAll(pools.inSetter(load), baskets(uncounted), entry.instant());
        }
        if (sum > held) {
            doubts.add(DiscrepancyKind.MORE_OUT_THAN_IN, entry, load, sum, held, What.Gone.TRANSFERRED);
        } else if (uncounted.isEmpty() && pools.least(pools.inSetter(load)) > 0) {
            doubts.add(DiscrepancyKind.LEFT_AT_TRANSFER, entry, load, sum, held);
        }
    }

    private void takeOff(Effective entry, TakenOff it) {
        var named = named(entry, it.counted());
        if (named.isEmpty()) {
            return;
        }
        var about = it.counted();
        int day = day(named.getFirst(), entry);
        int held = pools.most(pools.in(it.counted()));
        var counts = List.of(
                new Pools.Leaving(Fate.SALEABLE, it.saleable()),
                new Pools.Leaving(Fate.CULLED, it.culled()),
                new Pools.Leaving(Fate.DEAD_IN_BASKET, it.deadInBasket()),
                new Pools.Leaving(Fate.PIPPED_ALIVE_LEFT, it.pippedAliveLeft()));
        for (var missing : pools.take(it.counted(), counts, entry.id(), day, day)) {
            int late = opening.takeLate(it.counted(), missing, entry.id(), day);
            if (late < missing.eggs()) {
                doubts.moreOutThanIn(entry, about, new Pools.Leaving(missing.fate(), missing.eggs() - late), held);
            }
        }
        if (it.pull() == Pull.LAST) {
            pools.lastPull(it.counted(), entry.id(), day);
            named.forEach(l -> stories.lastPull(l.ref.set(), entry));
        }
    }

    private void breakOut(Effective entry, BrokenOut it) {
        var named = named(entry, it.scope());
        if (named.isEmpty()) {
            return;
        }
        var about = it.scope();
        int day = day(named.getFirst(), entry);
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
