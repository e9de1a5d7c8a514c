package eggwright.desk;

import eggwright.desk.assets.Assets;
import eggwright.desk.part.OutsideShown;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import eggwright.desk.words.Words;
import java.util.List;
import java.util.Locale;

/**
 * What stands around every page.
 *
 * @param farm its name
 * @param look of this browser
 * @param visitor who sees it
 * @param outside places that are outside their band; nothing for whoever has not joined
 * @param path that this page was asked for under; where the choice of look comes back to
 */
public record Frame(
        String farm, Look look, Visitor visitor, String path, Words words, Assets assets, OutsideShown outside) {
    /** A text of the frame itself. */
    public String say(String key, Object... arguments) {
        return words.say(key, arguments);
    }

    /** The address of a style sheet, script, icon or typeface. */
    public String asset(String name) {
        return assets.url(name);
    }

    public Locale language() {
        return words.language();
    }

    /** Those of the places that this visitor may go to. */
    public List<Place> open(List<Place> places) {
        return visitor.role()
                .map(role -> places.stream()
                        .filter(place -> place != Place.NOTES || role != Role.LOOKER)
                        .toList())
                .orElseGet(List::of);
    }

    /** Whether the visitor has joined. Whoever has not is told nothing of the farm. */
    public boolean isKnown() {
        return visitor.role().isPresent();
    }

    /** The name of a place. */
    public String name(Place place) {
        return words.say("place." + place);
    }
}
