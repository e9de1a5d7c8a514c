package eggwright.desk.rate;

import eggwright.desk.part.TableShown;
import eggwright.desk.picture.Picture;
import java.util.List;

/**
 * Rates of groups, or of one of them.
 *
 * @param back where it came from, or empty on the page of all
 * @param choices by what rates may be grouped
 */
public record RatesPage(String title, String lead, List<Choice> back, List<Choice> choices, List<Section> sections) {
    public RatesPage {
        back = List.copyOf(back);
        choices = List.copyOf(choices);
        sections = List.copyOf(sections);
    }

    /** A way to look at it. */
    public record Choice(String path, String label, Standing standing) {}

    /** Whether a choice is the one that is shown. */
    public enum Standing {
        SHOWN,
        OTHER
    }

    /**
     * A heading, and what stands under it.
     *
     * @param text sentences under the heading; a paragraph each
     * @param fold words of the one touch behind which the tables lie; empty where they lie open
     */
    public record Section(
            String title, List<String> text, List<Picture> pictures, List<TableShown> tables, String fold) {
        public Section {
            text = List.copyOf(text);
            pictures = List.copyOf(pictures);
            tables = List.copyOf(tables);
        }

        /** With its tables open. */
        public Section(String title, List<String> text, List<Picture> pictures, List<TableShown> tables) {
            this(title, text, pictures, tables, "");
        }
    }
}
