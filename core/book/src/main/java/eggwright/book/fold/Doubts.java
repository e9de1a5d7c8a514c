package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.LoadRef;
import java.util.ArrayList;
import java.util.List;

/** Collects what does not add up in a set. */
final class Doubts {
    private final List<Discrepancy> found = new ArrayList<>();

    void add(DiscrepancyKind kind, Effective entry, LoadRef load, int counted, int held, String what) {
        add(kind, entry, "set " + load.set() + ", tray " + load.tray(), counted, held, what);
    }

    void add(DiscrepancyKind kind, Effective entry, String about, int counted, int held, String what) {
        found.add(new Discrepancy(kind, List.of(entry.id()), about, counted, held, what));
    }

    /** The count is kept in the trail; only what was there can leave the account. */
    void moreOutThanIn(Effective entry, String about, Pools.Leaving missing, int held) {
        add(
                DiscrepancyKind.MORE_OUT_THAN_IN,
                entry,
                about,
                missing.eggs(),
                held,
                missing.fate().word());
    }

    List<Discrepancy> found() {
        return found;
    }

    static String words(Scope scope) {
        var words = new ArrayList<String>();
        if (scope.set() != null) {
            words.add("set " + scope.set());
        }
        if (scope.tray() != null) {
            words.add("tray " + scope.tray());
        }
        if (scope.basket() != null) {
            words.add("basket " + scope.basket());
        }
        if (scope.pen() != null) {
            words.add("pen " + scope.pen());
        }
        return String.join(", ", words);
    }
}
