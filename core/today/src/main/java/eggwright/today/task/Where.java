package eggwright.today.task;

import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * Where the work is.
 *
 * @param machine absent where it was not recorded, or the work is at no machine
 * @param section absent where it was not recorded, or the machine has none
 */
public record Where(@Nullable MachineName machine, @Nullable SectionName section) implements Comparable<Where> {
    /** At no machine, or it was not recorded. */
    public static final Where NOT_SAID = new Where(null, null);

    private static final Comparator<Where> ORDER = Comparator.comparing(
                    Where::machine, Comparator.nullsLast(Comparator.<MachineName>naturalOrder()))
            .thenComparing(Where::section, Comparator.nullsLast(Comparator.<SectionName>naturalOrder()));

    public static Where at(MachineName machine) {
        return new Where(machine, null);
    }

    @Override
    public int compareTo(Where other) {
        return ORDER.compare(this, other);
    }
}
