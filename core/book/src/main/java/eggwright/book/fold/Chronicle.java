package eggwright.book.fold;

import eggwright.book.entry.Kept;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * All entries by when they happened, the newest first. Laid out when it is first asked for, since folding needs no such
 * order, and kept up from then on.
 */
final class Chronicle {
    private static final Comparator<Kept> NEWEST_FIRST = Comparator.comparing(Kept::happened)
            .thenComparing(kept -> kept.entry().id())
            .reversed();

    /** Absent until asked for. */
    private @Nullable TreeSet<Kept> laidOut;

    void add(Kept fresh) {
        if (laidOut != null) {
            laidOut.add(fresh);
        }
    }

    List<Kept> newestFirst(Collection<Kept> all, int from, int most) {
        if (laidOut == null) {
            laidOut = new TreeSet<>(NEWEST_FIRST);
            laidOut.addAll(all);
        }
        return laidOut.stream().skip(from).limit(most).toList();
    }
}
