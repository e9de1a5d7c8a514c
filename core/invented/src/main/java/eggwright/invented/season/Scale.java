package eggwright.invented.season;

import eggwright.book.entry.Weighed;
import eggwright.book.entry.WeighedWhat;
import eggwright.units.Mass;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;

/** Weighs a few trays of each species in a set. */
final class Scale {
    private static final double TARE_GRAMS = 412;
    /** About 12 % by transfer on day 21 (usual target 11 to 13 %, common practice, no source). */
    private static final double LOSS_PER_DAY = 0.0058;

    private static final double EGG_SPREAD = 0.04;
    private static final double LOSS_SPREAD = 0.08;

    private final Farm farm;

    Scale(Farm farm) {
        this.farm = farm;
    }

    void weigh(Batch batch, List<Load> loads, LocalDate on, ZonedDateTime from) {
        var at = from;
        int left = farm.truth.notebook().weighedTrays();
        for (var load : loads) {
            if (left-- <= 0) {
                return;
            }
            if (!load.inside.isEmpty() && load.inside.size() <= load.eggs.size()) {
                farm.notebook.note(at, weighing(load, batch.day(on)));
                at = at.plusMinutes(2);
            }
        }
    }

    private Weighed weighing(Load load, int day) {
        var own = farm.streams.of("weights", load.set, load.tray);
        double fresh = farm.bird(load.species).eggGrams() * (1 + EGG_SPREAD * own.nextGaussian());
        double loss = LOSS_PER_DAY * load.section.weightLossTimes() * (1 + LOSS_SPREAD * own.nextGaussian());
        double gross = TARE_GRAMS + load.inside.size() * fresh * (1 - loss * day);
        return new Weighed(
                load.set,
                load.tray,
                WeighedWhat.WHOLE_TRAY,
                Mass.ofGrams(Math.rint(gross)),
                Mass.ofGrams(TARE_GRAMS),
                load.inside.size());
    }
}
