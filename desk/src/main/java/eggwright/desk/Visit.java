package eggwright.desk;

import eggwright.desk.form.Typed;
import eggwright.desk.who.Visitor;
import java.util.Locale;
import java.util.Map;

/**
 * What a visitor asks.
 *
 * @param visitor who asks; has leave to
 * @param path asked for, without its question
 * @param places what stood for the names in braces
 * @param asked the question after the path
 * @param typed the form, where one was sent
 * @param body what a script sent to {@link Routes#take}, as it was written; else empty
 * @param look of this browser
 * @param language of the answer
 * @param from the address that it came from
 */
public record Visit(
        Visitor visitor,
        String path,
        Map<String, String> places,
        Typed asked,
        Typed typed,
        String body,
        Look look,
        Locale language,
        String from) {
    public Visit {
        places = Map.copyOf(places);
    }

    /**
     * What stands in the path for a name in braces.
     *
     * @throws IllegalArgumentException if the path of this route has no such name
     */
    public String at(String name) {
        var found = places.get(name);
        if (found == null) {
            throw new IllegalArgumentException("The path has no {" + name + "}");
        }
        return found;
    }
}
