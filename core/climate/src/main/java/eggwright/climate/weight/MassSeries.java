package eggwright.climate.weight;

import eggwright.book.entry.WeighedWhat;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.WeighedAt;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The weighings of one tray, or of its marked eggs, as mean masses of an egg.
 *
 * <p>Clears that were taken out of a whole tray take their set mass with them: each is taken to have weighed what an egg of
 * the tray did, and since they may have been lighter or heavier the mean of the rest is that much less sure. Marked eggs
 * are the same each time; clears among them stay and are weighed with the others, for they lose about as much water as
 * live eggs (from memory).
 *
 * @param masses in time order
 */
public record MassSeries(SetName set, TrayName tray, WeighedWhat what, List<MeanMass> masses) {
    /**
     * Spread of egg masses within a tray: ours. 240 hen eggs of Goulden 1952 (Methods of Statistical Analysis, page 425) had
     * 12 %, some of two yolks among them; keepers leave those out.
     */
    static final double EGG_VARIATION = 0.08;

    /** A scale is no better than this share of what is on it: ours. */
    private static final double SCALE_SHARE = 0.0005;

    public MassSeries {
        masses = List.copyOf(masses);
    }

    /** Those of a load: at most one for the whole tray and one for marked eggs. */
    public static List<MassSeries> of(LoadPicture load) {
        var series = new ArrayList<MassSeries>();
        for (var what : WeighedWhat.values()) {
            var weighings = load.weighings().values().stream()
                    .filter(w -> w.what().what() == what)
                    .sorted(Comparator.comparing(WeighedAt::at))
                    .toList();
            if (!weighings.isEmpty()) {
                int atFirst = weighings.getFirst().what().eggs();
                series.add(new MassSeries(
                        load.ref().set(),
                        load.ref().tray(),
                        what,
                        weighings.stream().map(w -> mean(w, atFirst)).toList()));
            }
        }
        return series;
    }

    private static MeanMass mean(WeighedAt weighed, int eggsAtFirst) {
        var what = weighed.what();
        var tare = what.tare();
        double net = what.gross().grams() - (tare == null ? 0 : tare.grams());
        double mean = net / what.eggs();
        double scale = Math.hypot(
                        step(what.gross()) / Math.sqrt(12),
                        SCALE_SHARE * what.gross().grams())
                / what.eggs();
        double others = what.what() == WeighedWhat.WHOLE_TRAY && what.eggs() < eggsAtFirst
                ? EGG_VARIATION * Math.abs(mean) * Math.sqrt(1.0 / what.eggs() - 1.0 / eggsAtFirst)
                : 0;
        return new MeanMass(weighed.at().toInstant(), mean, Math.hypot(scale, others), what.eggs());
    }

    /** The last digit that was written, in grams: 2430g was read to a gram, 31.2g to a tenth. */
    private static double step(eggwright.units.Mass mass) {
        int decimals = Math.max(
                0, BigDecimal.valueOf(mass.number()).stripTrailingZeros().scale());
        double ofUnit =
                mass.unit() == eggwright.units.Mass.Unit.GRAM ? 1 : new eggwright.units.Mass(1, mass.unit()).grams();
        return ofUnit * Math.pow(10, -decimals);
    }
}
