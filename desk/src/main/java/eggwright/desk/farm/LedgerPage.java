package eggwright.desk.farm;

import eggwright.desk.Place;
import eggwright.desk.part.TableShown;
import eggwright.desk.picture.Picture;
import java.util.List;

/**
 * A page of ruled tables.
 *
 * @param lead one sentence on what it shows
 * @param links where to go on, as buttons
 */
public record LedgerPage(
        Place here, String title, String lead, List<Link> links, List<Picture> pictures, List<Sheet> sheets) {
    public LedgerPage {
        links = List.copyOf(links);
        pictures = List.copyOf(pictures);
        sheets = List.copyOf(sheets);
    }

    public record Link(String path, String label) {}

    /** One table; its text stands alone where it has no rows. */
    public record Sheet(String title, String text, List<String> heads, List<List<Cell>> rows) {
        public Sheet {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
        }

        /** As a table of a page. */
        public TableShown table() {
            return new TableShown(
                    heads,
                    rows.stream()
                            .map(row -> row.stream()
                                    .map(cell -> new TableShown.Cell(cell.text(), cell.path()))
                                    .toList())
                            .toList());
        }
    }

    /**
     * @param path empty where it leads nowhere
     */
    public record Cell(String text, String path) {
        static Cell of(Object text) {
            return new Cell(String.valueOf(text), "");
        }
    }
}
