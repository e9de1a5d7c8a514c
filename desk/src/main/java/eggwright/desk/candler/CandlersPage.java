package eggwright.desk.candler;

import eggwright.desk.part.RateShown;
import java.util.List;

/**
 * Everybody who noted a look, by name.
 *
 * @param pairs how far two people agree whose looks were blind
 */
public record CandlersPage(List<Person> people, List<Pair> pairs) {
    public CandlersPage {
        people = List.copyOf(people);
        pairs = List.copyOf(pairs);
    }

    CandlersPage withPairs(List<Pair> found) {
        return new CandlersPage(people, found);
    }

    /**
     * Two people.
     *
     * @param names of both
     * @param facts what their blind looks tell
     */
    public record Pair(String names, List<Fact> facts) {
        public Pair {
            facts = List.copyOf(facts);
        }
    }

    /**
     * One person.
     *
     * @param looks how many looks were noted
     * @param clears what became of the eggs called clear
     * @param misses infertile eggs that were left in
     */
    public record Person(String name, String looks, List<Fact> clears, List<Fact> misses) {
        public Person {
            clears = List.copyOf(clears);
            misses = List.copyOf(misses);
        }
    }

    /**
     * A thing and what is known of it.
     *
     * @param rates a rate with its interval, or none
     * @param text more words; empty where the rate says all
     */
    public record Fact(String name, List<RateShown> rates, String text) {
        public Fact {
            rates = List.copyOf(rates);
        }
    }
}
