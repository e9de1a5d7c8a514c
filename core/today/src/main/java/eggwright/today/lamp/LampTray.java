package eggwright.today.lamp;

import eggwright.book.name.PenName;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Place;
import eggwright.today.schedule.LookDay;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tray that can be taken to the lamp.
 *
 * @param species the bird whose look comes first where there are several
 * @param periodDays from set to hatch
 * @param dayZero local date on which it went into the heat
 * @param day of incubation today
 * @param eggs in it; absent where they were last counted together with other trays
 * @param place where it stands; absent where not recorded
 * @param pens whose eggs are in it, where there are several and each egg can be told by what it shows or where it lies;
 *     else empty
 * @param looks the looks of its species or farm that were not taken, in order of day
 * @param judging between which days the lamp can be trusted
 */
public record LampTray(
        LoadRef load,
        Species species,
        double periodDays,
        LocalDate dayZero,
        int day,
        @Nullable Integer eggs,
        @Nullable Place place,
        List<PenEggs> pens,
        List<LookDay> looks,
        Judging judging) {
    public LampTray {
        pens = List.copyOf(pens);
        looks = List.copyOf(looks);
    }

    /**
     * Eggs of one pen in a tray.
     *
     * @param eggs absent where they were counted together with those of another pen, and nobody knows how many of each are left
     * @param mark how they are marked on the shell; absent where they are not, and told by that, or by place
     * @param places where they were put in the tray; empty where not recorded
     */
    public record PenEggs(
            PenName pen, @Nullable Integer eggs, @Nullable String mark, List<Integer> places) {
        public PenEggs {
            places = List.copyOf(places);
        }
    }
}
