package eggwright.invented.season;

import eggwright.book.name.EntryId;
import eggwright.book.name.SetName;
import eggwright.invented.answer.SetAnswer;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** One set and its loads. */
final class Batch {
    final SetName name;
    final int number;
    final ZonedDateTime startedAt;
    final List<Load> loads;
    final List<Hatched> hatched = new ArrayList<>();

    /** The looks at trays from which nothing had been taken yet. */
    final List<EntryId> firstLooks = new ArrayList<>();

    Batch(SetName name, int number, ZonedDateTime startedAt, List<Load> loads) {
        this.name = name;
        this.number = number;
        this.startedAt = startedAt;
        this.loads = List.copyOf(loads);
    }

    /** Saleable chicks of one species taken off at one pull. */
    record Hatched(Species species, ZonedDateTime at, int saleable) {}

    List<Species> species() {
        return loads.stream().map(l -> l.species).distinct().sorted().toList();
    }

    List<Load> of(Species species) {
        return loads.stream().filter(l -> l.species == species).toList();
    }

    LocalDate setOn() {
        return startedAt.toLocalDate();
    }

    int day(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(setOn(), date);
    }

    SetAnswer answer() {
        return new SetAnswer(name, setOn(), loads.stream().map(Load::answer).toList());
    }
}
