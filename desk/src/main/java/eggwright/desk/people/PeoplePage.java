package eggwright.desk.people;

import eggwright.desk.part.NoticeShown;
import java.util.List;
import java.util.Optional;

/**
 * All buyers: those with a name, and numbers of the book that have none.
 *
 * @param notice what was just done; empty where nothing was
 */
public record PeoplePage(Optional<NoticeShown> notice, List<Person> people, List<Nameless> nameless) {
    public PeoplePage {
        people = List.copyOf(people);
        nameless = List.copyOf(nameless);
    }

    /**
     * @param about address and note, one after the other
     * @param inTheBook in how many notes the number stands
     */
    public record Person(
            String number, String name, String about, String inTheBook, String changePath, String erasePath) {}

    /** A number of the book without a name: never given one, or erased. */
    public record Nameless(String number, String inTheBook, String addPath) {}
}
