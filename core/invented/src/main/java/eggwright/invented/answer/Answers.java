package eggwright.invented.answer;

import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What really happened in a season. */
public record Answers(List<SetAnswer> sets, List<Planted> planted) {
    public Answers {
        sets = List.copyOf(sets);
        planted = List.copyOf(planted);
    }

    public Optional<SetAnswer> set(SetName name) {
        return sets.stream().filter(s -> s.set().equals(name)).findFirst();
    }

    public Stream<EggStory> eggs() {
        return sets.stream().flatMap(SetAnswer::eggs);
    }

    /** Saleable chicks of each set. */
    public SortedMap<SetName, Integer> saleable() {
        var found = new TreeMap<SetName, Integer>();
        sets.forEach(s -> found.put(s.set(), s.saleable()));
        return found;
    }

    /** Eggs of a pen, and how many of them were truly fertile. */
    public PenAnswer pen(PenName pen) {
        var mine = eggs().filter(e -> e.pen().equals(pen)).toList();
        return new PenAnswer(pen, mine.size(), (int)
                mine.stream().filter(e -> e.germ() == Germ.FERTILE).count());
    }

    /** True fertility of a pen over the season. */
    public record PenAnswer(PenName pen, int set, int fertile) {}
}
