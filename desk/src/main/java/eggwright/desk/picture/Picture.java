package eggwright.desk.picture;

import java.util.List;

/** A picture with the sentence that says what it shows, its key, and its numbers as a table. */
public sealed interface Picture permits AccountBar, IntervalPlot, SeasonChart, ForecastBand, ClimateChart, LossChart {
    /** One of its own in the page: letters, digits and hyphens. */
    String id();

    String title();

    /** One sentence: what a person sees in it. */
    String says();

    Numbers numbers();

    /** The drawing. All texts in it are escaped. */
    String svg();

    /** What its patterns mean, in the order of the drawing; empty where the drawing says so itself. */
    default List<Key> key() {
        return List.of();
    }

    /**
     * One line of the key.
     *
     * @param swatch a small drawing of the pattern
     * @param label in words
     * @param number beside it; empty where there is none
     */
    record Key(String swatch, String label, String number) {}
}
