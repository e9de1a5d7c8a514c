package eggwright.stats.mixed;

import eggwright.stats.sparse.FactorPattern;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rows sorted into cells: the rows of a cell are of the same level of every grouping but the one that gives each row its
 * own level, which never enters a matrix. The other groupings' levels are nodes of one, those with most levels first:
 * that way levels nested in others fill nothing in.
 */
final class Cells {
    static final int NONE = -1;

    /** Which grouping gives each row its own level, or {@link #NONE}. */
    final int rowGrouping;
    /** The groupings that have nodes, in the order of their nodes. */
    final int[] groupings;
    /** Node of the first level of each of {@link #groupings}, and the number of all nodes. */
    final int[] firstNode;
    /** By place, the row as it was given. */
    final int[] order;
    /** Where each cell starts among the places, and the end of the last. */
    final int[] start;
    /** The nodes of each cell, one for each of {@link #groupings}. */
    final int[] nodes;

    final FactorPattern pattern;
    /** Places in the pattern of every two of a cell's nodes: of node k with each up to k. */
    final int[] places;

    Cells(int rows, List<Grouping> random) {
        rowGrouping = IntStream.range(0, random.size())
                .filter(g -> random.get(g).levels().size() == rows)
                .findFirst()
                .orElse(NONE);
        groupings = IntStream.range(0, random.size())
                .filter(g -> g != rowGrouping)
                .boxed()
                .sorted(Comparator.comparingInt(g -> -random.get(g).levels().size()))
                .mapToInt(g -> g)
                .toArray();
        var sorted = new ArrayList<Grouping>();
        firstNode = new int[groupings.length + 1];
        for (int k = 0; k < groupings.length; k++) {
            var grouping = random.get(groupings[k]);
            sorted.add(grouping);
            firstNode[k + 1] = firstNode[k] + grouping.levels().size();
        }
        order = sortedRows(rows, sorted);
        start = starts(sorted);
        nodes = nodes(sorted);
        pattern = FactorPattern.ofSquares(nodeCount(), nodes, Math.max(1, groupings.length));
        places = places();
    }

    int nodeCount() {
        return firstNode[groupings.length];
    }

    int cellCount() {
        return start.length - 1;
    }

    int width() {
        return groupings.length;
    }

    /** Sorted by each grouping in turn, the last first, so that rows of one cell lie together. */
    private static int[] sortedRows(int rows, List<Grouping> groupings) {
        int[] order = IntStream.range(0, rows).toArray();
        for (var grouping : groupings.reversed()) {
            int[] end = new int[grouping.levels().size() + 1];
            for (int level : grouping.levelOfRow()) {
                end[level + 1]++;
            }
            for (int level = 0; level + 1 < end.length; level++) {
                end[level + 1] += end[level];
            }
            int[] next = new int[rows];
            int[] levels = grouping.levelOfRow();
            for (int row : order) {
                next[end[levels[row]]++] = row;
            }
            order = next;
        }
        return order;
    }

    private int[] starts(List<Grouping> groupings) {
        var levels = groupings.stream().map(Grouping::levelOfRow).toList();
        var starts = IntStream.builder();
        starts.add(0);
        for (int place = 1; place < order.length; place++) {
            for (int[] level : levels) {
                if (level[order[place]] != level[order[place - 1]]) {
                    starts.add(place);
                    break;
                }
            }
        }
        starts.add(order.length);
        return starts.build().toArray();
    }

    private int[] nodes(List<Grouping> groupings) {
        int width = groupings.size();
        int[] all = new int[cellCount() * width];
        for (int k = 0; k < width; k++) {
            int[] level = groupings.get(k).levelOfRow();
            for (int cell = 0; cell < cellCount(); cell++) {
                all[cell * width + k] = firstNode[k] + level[order[start[cell]]];
            }
        }
        return all;
    }

    private int[] places() {
        int width = width();
        int pairs = width * (width + 1) / 2;
        int[] all = new int[cellCount() * pairs];
        int at = 0;
        for (int cell = 0; cell < cellCount(); cell++) {
            for (int k = 0; k < width; k++) {
                for (int l = 0; l <= k; l++) {
                    all[at++] = pattern.place(nodes[cell * width + k], nodes[cell * width + l]);
                }
            }
        }
        return all;
    }
}
