package eggwright.book.fold;

import eggwright.book.name.BasketName;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Parcels;
import java.util.SortedSet;

/** Eggs that left, and how. Break-outs take from {@code eggs} and leave {@code atTheLamp} as it was. */
final class Departure {
    final Parcels of;
    final Fate fate;
    final EntryId by;
    final SortedSet<LoadRef> where;
    final SortedSet<BasketName> baskets;
    final int fromDay;
    final int toDay;
    int eggs;
    int atTheLamp;

    Departure(
            Parcels of,
            Fate fate,
            EntryId by,
            SortedSet<LoadRef> where,
            SortedSet<BasketName> baskets,
            int fromDay,
            int toDay,
            int eggs,
            int atTheLamp) {
        this.of = of;
        this.fate = fate;
        this.by = by;
        this.where = where;
        this.baskets = baskets;
        this.fromDay = fromDay;
        this.toDay = toDay;
        this.eggs = eggs;
        this.atTheLamp = atTheLamp;
    }

    FateCount now() {
        return new FateCount(of, fate, eggs, by, fromDay, toDay);
    }

    FateCount seenAtTheLamp() {
        return new FateCount(of, fate, atTheLamp, by, fromDay, toDay);
    }
}
