package eggwright.book.fold;

import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.LoadPlaced;
import eggwright.book.entry.Scope;
import eggwright.book.entry.Weighed;
import eggwright.book.picture.Discrepancy.What;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Place;
import eggwright.book.picture.WeighedAt;

/** Eggs that went from load to load, loads that went from place to place, and what they weighed. */
final class Moving {
    private final Loads loads;
    private final Pools pools;
    private final SetStories stories;
    private final Doubts doubts;

    Moving(Loads loads, Pools pools, SetStories stories, Doubts doubts) {
        this.loads = loads;
        this.pools = pools;
        this.stories = stories;
        this.doubts = doubts;
    }

    void move(Effective entry, EggsMoved it) {
        var from = new Scope(it.fromSet(), it.fromTray(), it.pen(), null, null);
        var named = loads.named(entry, from);
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
        if (loads.get(to) == null) {
            var source = named.getFirst();
            var fresh = new LoadState(to, source.setOn, source.startedAt);
            fresh.places.addAll(source.places);
            fresh.looks.addAll(source.looks);
            if (it.machine() != null) {
                fresh.places.add(new Place(entry.instant(), it.machine(), it.section(), null));
            }
            loads.put(fresh);
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

    void place(Effective entry, LoadPlaced it) {
        for (var load : loads.named(entry, Scope.ofLoad(it.set(), it.tray()))) {
            load.places.add(new Place(entry.instant(), it.machine(), it.section(), it.position()));
        }
    }

    void weigh(Effective entry, Weighed it) {
        for (var load : loads.named(entry, Scope.ofLoad(it.set(), it.tray()))) {
            load.weighings.put(entry.id(), new WeighedAt(entry.at(), it));
        }
    }
}
