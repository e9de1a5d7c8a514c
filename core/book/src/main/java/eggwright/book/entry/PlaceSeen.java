package eggwright.book.entry;

/**
 * What the egg in one place of the tray showed.
 *
 * @param place counted from 1, row by row, as the farm counts
 */
public record PlaceSeen(int place, Finding finding) {
    public PlaceSeen {
        Checks.atLeast("Place", place, 1);
        Checks.count("Place", place);
    }
}
