package eggwright.stats.mixed;

import eggwright.units.OutOfRange;
import java.util.List;

/**
 * Which group each row is of, where groups scatter: pens, weeks, trays.
 *
 * @param name as it is answered
 * @param levelOfRow by row, the place in {@code levels}
 * @param levels their names, each used by a row
 */
public record Grouping(String name, int[] levelOfRow, List<String> levels) {
    public Grouping {
        levelOfRow = levelOfRow.clone();
        levels = List.copyOf(levels);
        var used = new boolean[levels.size()];
        for (int level : levelOfRow) {
            if (!(level >= 0 && level < used.length)) {
                throw new OutOfRange("Level " + level + " of " + name + " is outside 0 to " + (used.length - 1));
            }
            used[level] = true;
        }
        for (int level = 0; level < used.length; level++) {
            if (!used[level]) {
                throw new OutOfRange("No row is of level " + levels.get(level) + " of " + name + ". Leave it out");
            }
        }
    }

    /** Whether both part the rows alike, whatever they are called. */
    boolean partsAsDoes(Grouping other) {
        if (levels.size() != other.levels.size()) {
            return false;
        }
        int[] partner = new int[levels.size()];
        java.util.Arrays.fill(partner, -1);
        for (int row = 0; row < levelOfRow.length; row++) {
            int mine = levelOfRow[row];
            if (partner[mine] == -1) {
                partner[mine] = other.levelOfRow[row];
            } else if (partner[mine] != other.levelOfRow[row]) {
                return false;
            }
        }
        return true;
    }
}
