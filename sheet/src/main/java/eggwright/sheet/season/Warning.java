package eggwright.sheet.season;

import java.util.List;

/**
 * Something unusual that was taken all the same.
 *
 * @param rows the rows as a spreadsheet numbers them, in order
 * @param column the name in the header
 * @param text what is unusual and what was done, as a sentence
 */
public record Warning(List<Integer> rows, String column, String text) {
    private static final int MOST_SHOWN = 8;

    public Warning {
        rows = List.copyOf(rows);
    }

    /** For example: {@code Rows 2, 3 and 7, column "candled_on": no date of the look …} */
    public String words() {
        var shown = rows.stream().limit(MOST_SHOWN).map(String::valueOf).toList();
        String which;
        if (rows.size() == 1) {
            which = "Row " + rows.getFirst();
        } else if (rows.size() > MOST_SHOWN) {
            which = "Rows " + String.join(", ", shown) + " and " + (rows.size() - MOST_SHOWN) + " more";
        } else {
            which = "Rows " + String.join(", ", shown.subList(0, shown.size() - 1)) + " and " + shown.getLast();
        }
        return which + ", column \"" + column + "\": " + text;
    }
}
