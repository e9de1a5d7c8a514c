package eggwright.book.fold;

import eggwright.book.name.EntryId;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.Parcels;
import java.util.List;

/** Eggs that left, and how. Break-outs take from {@code eggs} and leave {@code atTheLamp} as it was. */
final class Departure implements Counted {
    private final List<Spot> spots;
    private final Parcels of;
    final Fate fate;
    final EntryId by;
    final int fromDay;
    final int toDay;
    int eggs;
    int atTheLamp;

    /** @param spots as they stood when the eggs left */
    Departure(List<Spot> spots, Parcels of, Fate fate, EntryId by, int fromDay, int toDay, int eggs, int atTheLamp) {
        this.spots = spots;
        this.of = of;
        this.fate = fate;
        this.by = by;
        this.fromDay = fromDay;
        this.toDay = toDay;
        this.eggs = eggs;
        this.atTheLamp = atTheLamp;
    }

    @Override
    public List<Spot> spots() {
        return spots;
    }

    @Override
    public Parcels of() {
        return of;
    }

    @Override
    public int eggs() {
        return eggs;
    }

    FateCount now() {
        return new FateCount(of, fate, eggs, by, fromDay, toDay);
    }

    FateCount seenAtTheLamp() {
        return new FateCount(of, fate, atTheLamp, by, fromDay, toDay);
    }
}
