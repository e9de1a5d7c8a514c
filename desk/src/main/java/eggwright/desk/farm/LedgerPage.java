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
 * @param tasks what to do, most urgent first
 */
public record LedgerPage(
        Place here,
        String title,
        String lead,
        List<Link> links,
        List<Tasks> tasks,
        List<Picture> pictures,
        List<Sheet> sheets) {
    public LedgerPage {
        links = List.copyOf(links);
        tasks = List.copyOf(tasks);
        pictures = List.copyOf(pictures);
        sheets = List.copyOf(sheets);
    }

    /** A page without work. */
    public LedgerPage(
            Place here, String title, String lead, List<Link> links, List<Picture> pictures, List<Sheet> sheets) {
        this(here, title, lead, links, List.of(), pictures, sheets);
    }

    /** Work of one urgency or day. */
    public record Tasks(String title, List<Line> lines) {
        public Tasks {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One piece of work, as a sentence with a verb, leading to the place where it is done.
     *
     * @param mark words that set it apart, as "overdue"; empty for most
     */
    public record Line(String path, String text, String mark) {}

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
