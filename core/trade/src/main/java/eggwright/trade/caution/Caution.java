package eggwright.trade.caution;

import eggwright.trade.source.Source;
import java.util.List;

/**
 * A short warning that stands where the work is. It never gives a dose or a recipe.
 *
 * @param text the usual caution, two or three sentences
 * @param deferTo who knows better and has the say
 * @param sources where it stands; law has to be read again at its source
 */
public record Caution(Place place, String text, String deferTo, List<Source> sources) {
    public Caution {
        sources = List.copyOf(sources);
    }
}
