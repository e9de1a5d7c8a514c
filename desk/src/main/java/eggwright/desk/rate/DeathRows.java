package eggwright.desk.rate;

import eggwright.book.picture.Fate;
import eggwright.book.picture.Picture;
import eggwright.desk.part.TableShown;
import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.words.Words;
import eggwright.rates.Dimension;
import eggwright.rates.account.DeathWindow;
import eggwright.rates.account.DeathWindows;
import eggwright.trade.DayRange;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Between which days the eggs died that the lamp found dead and nobody opened. */
public final class DeathRows {
    private final Function<Species, SpeciesProfile> profiles;
    private final Words words;

    public DeathRows(Function<Species, SpeciesProfile> profiles, Locale language) {
        this.profiles = profiles;
        this.words = Words.beside(DeathRows.class, language);
    }

    /** Windows that look the same to a keeper. */
    private record Alike(int fromDay, int toDay, Fate fate, DeathWindow.Stage stage) {}

    private static final Comparator<Alike> BY_DAY = Comparator.comparingInt(Alike::fromDay)
            .thenComparingInt(Alike::toDay)
            .thenComparing(Alike::fate)
            .thenComparing(a -> a.stage().toString());

    /** Of the eggs of one group, or of a joint group together. */
    TableShown of(Picture picture, Dimension by, List<String> keys) {
        var key = by.keys(picture);
        var wanted = new HashSet<>(keys);
        var windows = new ArrayList<DeathWindow>();
        for (var account : picture.accounts()) {
            for (var window : DeathWindows.of(account, profiles)) {
                var found = new HashSet<String>();
                window.of().ids().forEach(id -> {
                    var parcel = account.parcels().get(id);
                    if (parcel != null) {
                        found.add(key.apply(parcel));
                    }
                });
                if (found.equals(wanted)) {
                    windows.add(window);
                }
            }
        }
        return of(windows);
    }

    public TableShown of(List<DeathWindow> windows) {
        Map<Alike, Integer> eggs = new TreeMap<>(BY_DAY);
        for (var window : windows) {
            var days = window.days();
            eggs.merge(
                    new Alike(days.fromDay(), days.toDay(), window.fate(), window.stage()),
                    window.eggs(),
                    Integer::sum);
        }
        return new TableShown(
                List.of(
                        words.say("head.died"),
                        words.say("head.eggs"),
                        words.say("head.seenAs"),
                        words.say("head.class")),
                eggs.entrySet().stream()
                        .map(e -> List.of(
                                Cell.of(days(new DayRange(
                                        e.getKey().fromDay(), e.getKey().toDay()))),
                                Cell.of(e.getValue()),
                                Cell.of(words.say("fate." + e.getKey().fate().word())),
                                Cell.of(stage(e.getKey().stage()))))
                        .toList());
    }

    private String days(DayRange days) {
        return days.fromDay() == days.toDay()
                ? words.say("onDay", days.toDay())
                : words.say("betweenDays", days.fromDay(), days.toDay());
    }

    private String stage(DeathWindow.Stage stage) {
        return switch (stage) {
            case DeathWindow.OneClass(var what) -> words.say("fate." + what.word());
            case DeathWindow.DaysOnly only -> words.say("class.several");
        };
    }
}
