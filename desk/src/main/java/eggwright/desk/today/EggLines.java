package eggwright.desk.today;

import eggwright.desk.today.TodayPage.Age;
import eggwright.desk.words.Words;
import eggwright.today.eggroom.EggLot;
import eggwright.today.eggroom.EggRoomSheet;
import eggwright.today.eggroom.Storage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What waits in the egg room, by age, in the order in which to set it. */
public final class EggLines {
    private final Words words;

    EggLines(Words words) {
        this.words = words;
    }

    public EggLines(Locale language) {
        this(Words.beside(EggLines.class, language));
    }

    TodayPage.Eggs of(EggRoomSheet room) {
        return new TodayPage.Eggs(
                room.eggs() == 0 ? words.say("eggs.none") : words.say("eggs.some", room.eggs()), ages(room.setFirst()));
    }

    private record Same(Optional<Integer> days, Storage storage) {}

    /** Lots of one age in one line; the order of the lots stays. */
    public List<Age> ages(List<EggLot> setFirst) {
        var byAge = new LinkedHashMap<Same, List<EggLot>>();
        for (var lot : setFirst) {
            byAge.computeIfAbsent(
                            new Same(Optional.ofNullable(lot.oldestDays()), lot.storage()), a -> new ArrayList<>())
                    .add(lot);
        }
        var several = setFirst.stream().map(l -> l.key().species()).distinct().count() > 1;
        return byAge.entrySet().stream()
                .map(e -> age(e.getKey(), e.getValue(), several))
                .toList();
    }

    private Age age(Same same, List<EggLot> lots, boolean severalSpecies) {
        var species = new LinkedHashMap<String, Map<String, Integer>>();
        for (var lot : lots) {
            species.computeIfAbsent(words.species(lot.key().species()), w -> new LinkedHashMap<>())
                    .merge(name(lot), lot.eggs(), Integer::sum);
        }
        var parts = new ArrayList<String>();
        species.forEach((word, pens) -> {
            var list = pens.entrySet().stream()
                    .map(pen -> words.say("eggs.ofPen", pen.getKey(), pen.getValue()))
                    .collect(Collectors.joining(", "));
            parts.add(severalSpecies ? words.say("eggs.ofSpecies", word, list) : list);
        });
        int eggs = lots.stream().mapToInt(EggLot::eggs).sum();
        return new Age(
                same.days().map(d -> words.say("eggs.age", d)).orElseGet(() -> words.say("eggs.ageNotKnown")),
                words.say("count", eggs),
                String.join("; ", parts),
                words.say("storage." + same.storage().word()));
    }

    private String name(EggLot lot) {
        var pen = lot.key().pen();
        return pen == null ? words.say("eggs.noPen") : pen.text();
    }
}
