package eggwright.invented.season;

import eggwright.book.entry.EggsDiscarded;
import eggwright.book.entry.EggsEaten;
import eggwright.book.entry.EggsGathered;
import eggwright.book.entry.EggsSold;
import eggwright.book.entry.PenChange;
import eggwright.book.entry.PenChanged;
import eggwright.book.entry.PenClosed;
import eggwright.book.entry.RejectReason;
import eggwright.book.entry.Rejected;
import eggwright.book.name.PenName;
import eggwright.invented.chance.Draw;
import eggwright.invented.truth.PenTruth;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.random.RandomGenerator;

/** Birds that lay, and the eggs that wait to be set, by pen and lay date. The oldest leave first. */
final class EggRoom {
    private static final double HEN_DIES_PER_WEEK = 0.02;
    /** Shares of the reasons for which eggs are rejected. From memory. */
    private static final Map<RejectReason, Double> REASONS = Map.of(
            RejectReason.CRACKED, 0.4,
            RejectReason.DIRTY, 0.25,
            RejectReason.MISSHAPEN, 0.15,
            RejectReason.THIN_OR_SOFT, 0.1,
            RejectReason.TOO_SMALL, 0.1);

    private final Farm farm;
    private final Map<String, NavigableMap<LocalDate, Integer>> stored = new HashMap<>();
    private final Map<String, Integer> hens = new HashMap<>();
    private final Map<String, RandomGenerator> lay = new HashMap<>();

    EggRoom(Farm farm) {
        this.farm = farm;
        for (var pen : farm.truth.pens()) {
            stored.put(pen.name(), new TreeMap<>());
            hens.put(pen.name(), pen.hens());
            lay.put(pen.name(), farm.streams.of("lay", pen.name()));
        }
    }

    /** Eggs of one lay date. */
    record Laid(LocalDate on, int eggs) {}

    int held(PenTruth pen) {
        return shelf(pen).values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Takes the oldest. */
    List<Laid> take(PenTruth pen, int eggs) {
        var taken = new ArrayList<Laid>();
        var shelf = shelf(pen);
        int left = eggs;
        while (left > 0 && !shelf.isEmpty()) {
            var oldest = shelf.firstEntry();
            int some = Math.min(left, oldest.getValue());
            taken.add(new Laid(oldest.getKey(), some));
            left -= some;
            if (some == oldest.getValue()) {
                shelf.remove(oldest.getKey());
            } else {
                shelf.put(oldest.getKey(), oldest.getValue() - some);
            }
        }
        return taken;
    }

    void gather(LocalDate day) {
        int minute = 0;
        for (var pen : farm.truth.pens()) {
            changes(pen, day);
            var random = lay.getOrDefault(pen.name(), farm.streams.of("lay", pen.name()));
            double rate = Math.min(1, pen.layRate(farm.day(day)));
            int laid = Draw.binomial(random, hens.getOrDefault(pen.name(), 0), rate);
            int rejected = Draw.binomial(random, laid, farm.truth.eggRoom().rejectedPct() / 100);
            if (laid > 0) {
                farm.notebook.noteCount(
                        farm.at(day, LocalTime.of(17, 0)).plusMinutes(minute),
                        new EggsGathered(
                                new PenName(pen.name()),
                                pen.species(),
                                day,
                                day,
                                laid - rejected,
                                reasons(random, rejected)));
                if (laid > rejected) {
                    shelf(pen).put(day, laid - rejected);
                }
            }
            minute += 4;
        }
    }

    private static List<Rejected> reasons(RandomGenerator random, int eggs) {
        var counts = new EnumMap<RejectReason, Integer>(RejectReason.class);
        for (int i = 0; i < eggs; i++) {
            double u = random.nextDouble();
            for (var reason : RejectReason.values()) {
                u -= REASONS.getOrDefault(reason, 0.0);
                if (u < 0) {
                    counts.merge(reason, 1, Integer::sum);
                    break;
                }
            }
        }
        return counts.entrySet().stream()
                .map(e -> new Rejected(e.getKey(), e.getValue()))
                .toList();
    }

    private void changes(PenTruth pen, LocalDate day) {
        var name = new PenName(pen.name());
        for (var event : farm.truth.events()) {
            if (event.pen().equals(pen.name()) && event.day() == farm.day(day)) {
                switch (event.what()) {
                    case COCK_FAILS -> {
                        // Nobody sees it.
                    }
                    case COCK_DIES ->
                        farm.notebook.note(
                                farm.at(day, LocalTime.of(7, 40)),
                                new PenChanged(name, PenChange.DIED, Math.min(1, pen.cocks()), 0, "Found dead"));
                    case COCKS_EXCHANGED ->
                        farm.notebook.note(
                                farm.at(day, LocalTime.of(15, 10)),
                                new PenChanged(name, PenChange.COCKS_EXCHANGED, pen.cocks(), 0, "Younger cocks"));
                }
            }
        }
        int left = hens.getOrDefault(pen.name(), 0);
        if (left > 1 && Draw.chance(farm.streams.of("hens", pen.name(), day), HEN_DIES_PER_WEEK / 7)) {
            hens.put(pen.name(), left - 1);
            farm.notebook.note(
                    farm.at(day, LocalTime.of(7, 35)), new PenChanged(name, PenChange.DIED, 0, 1, "Found dead"));
        }
    }

    /** Before a set: what is too old goes. */
    void discardOld(LocalDate day) {
        int minute = 0;
        for (var pen : farm.truth.pens()) {
            var old = shelf(pen).headMap(day.minusDays(farm.truth.eggRoom().keepDays()));
            int eggs = old.values().stream().mapToInt(Integer::intValue).sum();
            if (eggs > 0) {
                old.clear();
                farm.notebook.note(
                        farm.at(day, LocalTime.of(18, 10)).plusMinutes(minute++),
                        new EggsDiscarded(new PenName(pen.name()), pen.species(), null, null, eggs, "Too old to set"));
            }
        }
    }

    /** The day after a set: of what is left over some are sold and some eaten. */
    void clearSome(LocalDate day) {
        int kitchen = farm.truth.eggRoom().eatenPerWeek();
        int minute = 0;
        for (var pen : farm.truth.pens()) {
            var name = new PenName(pen.name());
            int sold = (int) (held(pen) * farm.truth.eggRoom().soldPctPerWeek() / 100);
            if (sold >= 6) {
                take(pen, sold);
                farm.notebook.note(
                        farm.at(day, LocalTime.of(11, 20)).plusMinutes(minute++),
                        new EggsSold(name, pen.species(), null, null, null, sold));
            }
            int eaten = Math.min(kitchen, held(pen));
            if (eaten > 0) {
                kitchen -= eaten;
                take(pen, eaten);
                farm.notebook.note(
                        farm.at(day, LocalTime.of(12, 0)).plusMinutes(minute++),
                        new EggsEaten(name, pen.species(), null, null, eaten));
            }
        }
    }

    /** After the last set: the pens are broken up and the room is emptied. */
    void empty(LocalDate day) {
        int minute = 0;
        for (var pen : farm.truth.pens()) {
            var name = new PenName(pen.name());
            int eggs = held(pen);
            if (eggs > 0) {
                take(pen, eggs);
                farm.notebook.note(
                        farm.at(day, LocalTime.of(13, 0)).plusMinutes(minute++),
                        new EggsDiscarded(name, pen.species(), null, null, eggs, "End of the season"));
            }
            farm.notebook.note(
                    farm.at(day, LocalTime.of(14, 0)).plusMinutes(minute++), new PenClosed(name, "End of the season"));
        }
    }

    private NavigableMap<LocalDate, Integer> shelf(PenTruth pen) {
        return stored.computeIfAbsent(pen.name(), p -> new TreeMap<>());
    }
}
