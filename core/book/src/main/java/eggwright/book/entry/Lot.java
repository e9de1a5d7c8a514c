package eggwright.book.entry;

import eggwright.book.name.PenName;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Eggs of one pen and one run of lay dates that went into a load.
 *
 * @param pen absent where the farm keeps no pens apart or it was not recorded
 * @param laidFrom first lay date, absent where not recorded
 * @param laidTo last lay date, absent where not recorded
 * @param mark how the eggs are marked on the shell; absent where they are not
 * @param places the numbers of their places in the tray, from 1; empty where not recorded
 */
public record Lot(
        @Nullable PenName pen,
        Species species,
        @Nullable LocalDate laidFrom,
        @Nullable LocalDate laidTo,
        int eggs,
        @Nullable String mark,
        List<Integer> places) {
    public Lot {
        Checks.count("Eggs of the lot", eggs);
        Checks.atLeast("Eggs of the lot", eggs, 1);
        Checks.inOrder("Laid", laidFrom, laidTo);
        places = List.copyOf(places);
        mark = mark == null ? null : Checks.text("Mark", mark);
    }

    public static Lot of(
            @Nullable PenName pen, Species species, @Nullable LocalDate from, @Nullable LocalDate to, int eggs) {
        return new Lot(pen, species, from, to, eggs, null, List.of());
    }

    /** Whether its eggs can be told from others in the same tray. */
    public boolean canBeToldApart() {
        return mark != null || !places.isEmpty();
    }
}
