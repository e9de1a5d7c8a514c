package eggwright.today.lamp;

import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * Between which days of incubation the lamp can be trusted. Source: trade handbook, candling: "day 7 for pale, day 8 to 10
 * for dark pheasant, guinea fowl and turkey", and "leave eggs alone in the last three days" (both from memory); other
 * birds from the first of their customary candling days.
 *
 * @param from first day on which a pale shell can be judged
 * @param darkFrom first day on which olive, brown and speckled shells can be judged too; at least {@code from}
 * @param until last day: from the transfer on, eggs are left alone
 */
public record Judging(int from, int darkFrom, int until) {
    private static final Set<Species> OFTEN_DARK = EnumSet.of(Species.PHEASANT, Species.GUINEA_FOWL, Species.TURKEY);
    private static final int DARK_FROM = 10;

    /** What the lamp can say on a day. */
    public enum Trust {
        TOO_EARLY,
        PALE_SHELLS_ONLY,
        CAN_BE_JUDGED,
        TOO_LATE
    }

    /** For one bird. */
    public static Judging of(SpeciesProfile profile) {
        int first = profile.customaryCandlingDays().value().stream()
                .mapToInt(Integer::intValue)
                .min()
                .orElse(DARK_FROM);
        int dark = OFTEN_DARK.contains(profile.species()) ? Math.max(first, DARK_FROM) : first;
        return new Judging(first, dark, (int) Math.floor(profile.transferDay().value()));
    }

    /** For a tray of several birds: as strict as the strictest. */
    static Judging strictest(List<Judging> all) {
        return new Judging(most(all, Judging::from), most(all, Judging::darkFrom), -most(all, j -> -j.until()));
    }

    private static int most(List<Judging> all, ToIntFunction<Judging> part) {
        return all.stream().mapToInt(part).max().orElseThrow();
    }

    /** What the lamp can say on a day of incubation. */
    public Trust on(int day) {
        if (day < from) {
            return Trust.TOO_EARLY;
        }
        if (day > until) {
            return Trust.TOO_LATE;
        }
        return day < darkFrom ? Trust.PALE_SHELLS_ONLY : Trust.CAN_BE_JUDGED;
    }
}
