package eggwright.cli.farm;

import eggwright.book.picture.Picture;
import eggwright.rates.Contrast;
import eggwright.rates.Contrasts;
import eggwright.rates.Dimension;
import eggwright.rates.GroupRates;
import eggwright.rates.RateReport;
import eggwright.rates.account.DeathWindow;
import eggwright.rates.account.DeathWindows;
import eggwright.rates.eggroom.RejectRate;
import eggwright.rates.eggroom.RejectRates;
import eggwright.today.schedule.FarmProfiles;
import java.util.List;
import java.util.Optional;

/**
 * All that a report tells.
 *
 * @param deaths windows in which eggs died that the lamp found dead and nobody opened
 * @param rejects of eggs gathered: by pen or by week of lay where that was asked for, otherwise of all
 */
record Reported(
        Dimension by,
        RateReport rates,
        Contrasts fertility,
        Contrasts hatch,
        List<DeathWindow> deaths,
        List<RejectRate> rejects) {
    Reported {
        deaths = List.copyOf(deaths);
        rejects = List.copyOf(rejects);
    }

    static Reported of(Picture picture, Dimension by) {
        var profiles = FarmProfiles.of(picture.farm());
        return new Reported(
                by,
                RateReport.of(picture, by),
                Contrasts.fertility(picture, by),
                Contrasts.hatchOfFertile(picture, by),
                picture.accounts().stream()
                        .flatMap(a -> DeathWindows.of(a, profiles::of).stream())
                        .toList(),
                rejects(picture, by));
    }

    private static List<RejectRate> rejects(Picture picture, Dimension by) {
        return switch (by) {
            case PEN -> RejectRates.byPen(picture);
            case LAY_WEEK -> RejectRates.byWeek(picture);
            case SET, TRAY, MACHINE, SECTION, SET_WEEK, STORAGE_DAYS, SPECIES, NONE -> {
                var all = RejectRates.total(picture);
                yield all.isEmpty() ? List.of() : List.of(new RejectRate(Dimension.ALL, Dimension.ALL, all));
            }
        };
    }

    /** The pen or week of a line of rejects, whichever it is kept by. */
    static String key(RejectRate reject) {
        return reject.pen().equals(Dimension.ALL) ? reject.week() : reject.pen();
    }

    /** A group against the rest; empty for a joint group, and for one of which nothing was counted. */
    static Optional<Contrast> contrast(Contrasts contrasts, GroupRates group) {
        return contrasts.contrasts().stream()
                .filter(c -> !group.isJoint() && c.key().equals(group.key()))
                .findFirst();
    }
}
