package eggwright.invented.season;

import eggwright.invented.chance.Streams;
import eggwright.invented.truth.Truth;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Map;

/** What all parts of one season share. */
final class Farm {
    final Truth truth;
    final Streams streams;
    final LocalDate from;
    final Notebook notebook;
    final Levels levels;
    private final Map<Species, Bird> birds = new EnumMap<>(Species.class);

    Farm(Truth truth, Streams streams, LocalDate from) {
        this.truth = truth;
        this.streams = streams;
        this.from = from;
        this.notebook = new Notebook(truth, streams);
        this.levels = new Levels(truth, streams);
    }

    /** A local hour of the farm; an hour that the clocks skip becomes the next one. */
    ZonedDateTime at(LocalDate day, LocalTime hour) {
        return ZonedDateTime.of(day, hour, truth.farm().zone());
    }

    /** Days since the first egg. */
    int day(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(from, date);
    }

    Bird bird(Species species) {
        return birds.computeIfAbsent(species, s -> Bird.of(s, truth.lossesOf(s)));
    }

    /** Two digits of the year, so that sets and orders of several seasons have names of their own. */
    String year() {
        return "%02d".formatted(from.getYear() % 100);
    }
}
