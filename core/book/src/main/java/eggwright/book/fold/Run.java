package eggwright.book.fold;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The entries that touch one part, in the order of the fold, and how many at the front are folded already. */
final class Run {
    /** Beyond so many late entries, sorting anew is quicker than finding the place of each. */
    private static final int FEW = 4;

    private final ArrayList<Effective> inOrder = new ArrayList<>();
    private final ArrayList<Effective> late = new ArrayList<>();
    private int folded;

    void add(Effective entry) {
        if (inOrder.isEmpty() || inOrder.getLast().compareTo(entry) < 0) {
            inOrder.add(entry);
        } else {
            late.add(entry);
        }
    }

    void remove(Effective entry) {
        settle();
        int at = Collections.binarySearch(inOrder, entry);
        if (at >= 0) {
            inOrder.remove(at);
            spoilFrom(at);
        }
    }

    List<Effective> inOrder() {
        settle();
        return inOrder;
    }

    boolean isEmpty() {
        return inOrder.isEmpty() && late.isEmpty();
    }

    /** How many at the front were folded, and none has come before or between them since; 0 where one has. */
    int folded() {
        settle();
        return folded;
    }

    void allFolded() {
        folded = inOrder.size();
    }

    private void settle() {
        if (late.isEmpty()) {
            return;
        }
        if (late.size() <= FEW) {
            for (var entry : late) {
                int at = -1 - Collections.binarySearch(inOrder, entry);
                inOrder.add(at, entry);
                spoilFrom(at);
            }
        } else {
            late.sort(null);
            int at = -1 - Collections.binarySearch(inOrder, late.getFirst());
            spoilFrom(at);
            inOrder.addAll(late);
            inOrder.subList(at, inOrder.size()).sort(null);
        }
        late.clear();
    }

    private void spoilFrom(int at) {
        if (at < folded) {
            folded = 0;
        }
    }
}
