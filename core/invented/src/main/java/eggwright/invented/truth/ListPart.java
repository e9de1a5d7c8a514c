package eggwright.invented.truth;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A part of the truth of which there can be several, each a section with a label of its own.
 *
 * @param word the section's first words
 * @param component of {@link Truth}
 * @param plain what a section says of that which it leaves out
 * @param labelled the component that takes the label, unless the section names it; absent where labels only tell apart
 */
record ListPart(
        String word,
        String component,
        Record plain,
        @Nullable String labelled) {
    static final List<ListPart> ALL = List.of(
            new ListPart("pen", "pens", PenTruth.PLAIN, "name"),
            new ListPart("event", "events", PenEventTruth.PLAIN, null),
            new ListPart("losses", "losses", LossTruth.PLAIN, "species"),
            new ListPart("machine", "machines", MachineTruth.PLAIN, "name"),
            new ListPart("section", "sections", SectionTruth.PLAIN, "name"),
            new ListPart("power cut", "powerCuts", PowerCutTruth.PLAIN, null));
}
