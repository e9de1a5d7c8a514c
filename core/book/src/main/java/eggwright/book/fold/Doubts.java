package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.Discrepancy.About;
import eggwright.book.picture.Discrepancy.What;
import eggwright.book.picture.DiscrepancyKind;
import java.util.ArrayList;
import java.util.List;

/** Collects what does not add up in a set. */
final class Doubts {
    private final List<Discrepancy> found = new ArrayList<>();

    void add(DiscrepancyKind kind, Effective entry, Scope about) {
        add(kind, entry, about, 0, 0);
    }

    void add(DiscrepancyKind kind, Effective entry, Scope about, int counted, int held) {
        add(kind, entry, about, counted, held, What.Untold.UNTOLD);
    }

    void add(DiscrepancyKind kind, Effective entry, Scope about, int counted, int held, What what) {
        found.add(new Discrepancy(kind, List.of(entry.id()), new About.Eggs(about), counted, held, what));
    }

    /** The count is kept in the trail; only what was there can leave the account. */
    void moreOutThanIn(Effective entry, Scope about, Pools.Leaving missing, int held) {
        add(DiscrepancyKind.MORE_OUT_THAN_IN, entry, about, missing.eggs(), held, new What.OfFate(missing.fate()));
    }

    List<Discrepancy> found() {
        return found;
    }
}
