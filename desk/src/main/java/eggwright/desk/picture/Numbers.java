package eggwright.desk.picture;

import eggwright.desk.part.TableShown;
import java.util.List;

/**
 * The numbers of a picture as a table, worded and rounded.
 *
 * @param heads of the columns; the first is that of the row heads
 * @param rows each as wide as the heads
 */
public record Numbers(List<String> heads, List<List<String>> rows) {
    public Numbers {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
        for (var row : rows) {
            if (row.size() != heads.size()) {
                throw new IllegalArgumentException("A row of " + row.size() + " under " + heads.size() + " heads");
            }
        }
    }

    /** As a table of a page. */
    public TableShown table() {
        return new TableShown(
                heads,
                rows.stream()
                        .map(row -> row.stream().map(TableShown.Cell::of).toList())
                        .toList());
    }
}
