package eggwright.invented.answer;

import eggwright.book.name.SetName;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** What really happened to one set. */
public record SetAnswer(SetName set, LocalDate setOn, List<LoadAnswer> loads) {
    public SetAnswer {
        loads = List.copyOf(loads);
    }

    public Stream<EggStory> eggs() {
        return loads.stream().flatMap(l -> l.eggs().stream());
    }

    public int eggsSet() {
        return loads.stream().mapToInt(l -> l.eggs().size()).sum();
    }

    public int fertile() {
        return loads.stream().mapToInt(LoadAnswer::fertile).sum();
    }

    public int eggs(TrueFate fate) {
        return loads.stream().mapToInt(l -> l.eggs(fate)).sum();
    }

    public int saleable() {
        return eggs(TrueFate.SALEABLE);
    }
}
