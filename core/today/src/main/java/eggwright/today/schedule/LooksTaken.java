package eggwright.today.schedule;

import eggwright.book.name.PenName;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LookTaken;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/** Whether the whole of a tray was looked at. */
public final class LooksTaken {
    private LooksTaken() {}

    /**
     * All eggs at once, or in parts that add up, or pen after pen.
     *
     * @param days which days of incubation count
     */
    public static boolean whole(LoadPicture load, SpeciesSchedule dates, IntPredicate days) {
        var zone = dates.set().getZone();
        return isWhole(
                load,
                load.looks().stream()
                        .filter(l -> days.test(dates.dayOf(FarmZone.date(l.at(), zone))))
                        .toList());
    }

    private static boolean isWhole(LoadPicture load, List<LookTaken> looks) {
        if (looks.stream().anyMatch(l -> l.look().scope().pen() == null && l.lookedAt() >= l.inTheLoad())) {
            return true;
        }
        var parts = looks.stream()
                .filter(l -> l.look().scope().pen() == null && l.look().scope().tray() != null)
                .toList();
        int most = parts.stream().mapToInt(LookTaken::inTheLoad).max().orElse(Integer.MAX_VALUE);
        if (parts.stream().mapToInt(LookTaken::lookedAt).sum() >= most) {
            return true;
        }
        var pens = load.parcels().stream()
                .map(p -> p.lot().pen())
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        var seen = new HashSet<PenName>();
        for (var look : looks) {
            var pen = look.look().scope().pen();
            if (pen != null && look.lookedAt() >= look.inTheLoad()) {
                seen.add(pen);
            }
        }
        return !pens.isEmpty() && seen.containsAll(pens);
    }
}
