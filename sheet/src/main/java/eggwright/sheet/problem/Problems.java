package eggwright.sheet.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Gathers what is wrong with one file, so that a person can mend it all at once. */
public final class Problems {
    /** As many as one answer shows. */
    public static final int MOST = 50;

    /** Kept before sorting, so that a file of nonsense takes no memory to speak of. */
    private static final int MOST_HELD = 20 * MOST;

    private final String file;
    private final List<Problem> found = new ArrayList<>();
    private int count;

    public Problems(String file) {
        this.file = file;
    }

    public void add(@Nullable Integer row, @Nullable String column, @Nullable String value, String what, String right) {
        count++;
        if (found.size() < MOST_HELD) {
            found.add(new Problem(file, row, column, value, what, right));
        }
    }

    public boolean isEmpty() {
        return count == 0;
    }

    /** How many there are. */
    public int count() {
        return count;
    }

    /** The first {@value #MOST}, in the order of the rows. */
    public List<Problem> shown() {
        return found.stream()
                .sorted(Comparator.comparingInt(p -> p.row() == null ? 0 : p.row()))
                .limit(MOST)
                .toList();
    }

    /** How many there are beyond those shown. */
    public int beyond() {
        return Math.max(0, count - MOST);
    }
}
