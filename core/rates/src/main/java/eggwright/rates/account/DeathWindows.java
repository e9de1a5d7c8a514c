package eggwright.rates.account;

import eggwright.book.name.SetName;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.Picture;
import eggwright.trade.BreakOutClass;
import eggwright.trade.DayRange;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Lamp "dead" means died since the last look: a range of days, which may lie inside one class of the break-out. */
public final class DeathWindows {
    private static final List<BreakOutClass> CLASSES =
            List.of(BreakOutClass.EARLY_DEAD, BreakOutClass.MID_DEAD, BreakOutClass.LATE_DEAD);

    private DeathWindows() {}

    /** The windows of one set, in the order in which they were counted; empty where the book knows no such set. */
    public static List<DeathWindow> of(Picture picture, SetName set, Function<Species, SpeciesProfile> profiles) {
        return picture.set(set)
                .map(s -> of(s.account(), profiles).stream()
                        .filter(w -> w.of().ids().stream()
                                .anyMatch(id -> id.load().set().equals(set)))
                        .toList())
                .orElse(List.of());
    }

    public static List<DeathWindow> of(EggAccount account, Function<Species, SpeciesProfile> profiles) {
        var windows = new ArrayList<DeathWindow>();
        for (var count : account.fates()) {
            if (count.fate() == Fate.DEAD || count.fate() == Fate.BLOOD_RING) {
                int to = Math.max(0, count.toDay());
                // An embryo has to have begun: nothing seen at the lamp died on day 0.
                int from = Math.min(to, Math.max(1, count.fromDay()));
                var days = new DayRange(from, to);
                windows.add(new DeathWindow(
                        count.of(), count.fate(), count.eggs(), days, stage(days, species(account, count), profiles)));
            }
        }
        return List.copyOf(windows);
    }

    private static Set<Species> species(EggAccount account, FateCount count) {
        var found = EnumSet.noneOf(Species.class);
        for (var id : count.of()) {
            var parcel = account.parcels().get(id);
            if (parcel != null) {
                found.add(parcel.lot().species());
            }
        }
        return found;
    }

    private static DeathWindow.Stage stage(
            DayRange days, Set<Species> species, Function<Species, SpeciesProfile> profiles) {
        var classes = species.stream()
                .map(s -> stage(days, profiles.apply(s)))
                .distinct()
                .toList();
        return classes.size() == 1
                ? classes.getFirst()
                        .<DeathWindow.Stage>map(DeathWindow.OneClass::new)
                        .orElseGet(DeathWindow.DaysOnly::new)
                : new DeathWindow.DaysOnly();
    }

    private static Optional<BreakOutClass> stage(DayRange days, SpeciesProfile profile) {
        return CLASSES.stream()
                .filter(c -> {
                    var range = profile.days(c).value();
                    return range.holds(days.fromDay()) && range.holds(days.toDay());
                })
                .findFirst();
    }
}
