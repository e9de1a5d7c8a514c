package eggwright.stats.doublesampling;

import eggwright.stats.interval.Level;
import eggwright.stats.predictive.BetaBinomial;
import eggwright.stats.predictive.WholeCounts;
import eggwright.units.OutOfRange;

/**
 * The trade's case of double sampling: all eggs were looked at, some were clear, and of the clears some were opened.
 * An egg that lives is fertile, so only the clears are in doubt.
 *
 * <p>Estimate: infertile share = clears/eggs x infertile/opened. Standard error: delta method, Tenenbein 1970, J. Am.
 * Stat. Assoc. 65:1350, with no misclassified lives. Interval: equal tails of the exact posterior, the product of two
 * independent betas, from the prior Dirichlet(1/2, 1/4, 1/4) for infertile, fertile but clear, and not clear. With that
 * prior the answer is Jeffreys' interval for infertile of eggs when every clear was opened. As there, the end is 0 when
 * no opened clear was infertile and 1 when all eggs were. Error: ends within 1e-8 of the posterior's.
 *
 * <p>The opened clears have to be taken without looking for the likely ones; and an egg that is infertile is taken
 * never to be called live.
 *
 * @param eggs eggs looked at, at least 1
 * @param clears of them clear
 * @param opened of the clears opened and named, at least 1 unless none was clear
 * @param infertile of the opened without any sign of development
 */
public record OpenedClears(long eggs, long clears, long opened, long infertile) {
    private static final double INFERTILE = 0.5;
    private static final double FERTILE_BUT_CLEAR = 0.25;
    private static final double NOT_CLEAR = 0.25;

    public OpenedClears {
        if (!(0 <= infertile && infertile <= opened && opened <= clears && clears <= eggs && eggs >= 1)) {
            throw new OutOfRange("Of " + eggs + " eggs " + clears + " clear, " + opened + " opened and " + infertile
                    + " infertile do not fit into each other");
        }
        if (clears > 0 && opened == 0) {
            throw new OutOfRange("None of " + clears
                    + " clears was opened: they may be infertile or dead early, and nothing can be corrected");
        }
    }

    /** The infertile among all eggs. */
    public CorrectedShare infertileShare(double level) {
        Level.check(level);
        double clear = (double) clears / eggs;
        double ofClear = opened == 0 ? 0 : (double) infertile / opened;
        double fromOpening = opened == 0 ? 0 : clear * clear * ofClear * (1 - ofClear) / opened;
        double fromLooking = ofClear * ofClear * clear * (1 - clear) / eggs;
        double tail = (1 - level) / 2;
        var share = new BetaProduct(
                clears + INFERTILE + FERTILE_BUT_CLEAR,
                eggs - clears + NOT_CLEAR,
                infertile + INFERTILE,
                opened - infertile + FERTILE_BUT_CLEAR);
        double low = infertile == 0 ? 0 : share.quantile(tail);
        double high = infertile == opened && clears == eggs ? 1 : share.quantile(1 - tail);
        return new CorrectedShare(clear * ofClear, Math.sqrt(fromOpening + fromLooking), low, high, level);
    }

    /** The truly fertile among all eggs: those not clear, and the clears that were fertile after all. */
    public CorrectedShare fertileShare(double level) {
        return infertileShare(level).mirrored();
    }

    /** How many of these very eggs were infertile: those found, and a chance for each clear that was not opened. */
    public WholeCounts infertileEggs() {
        int unopened = Math.toIntExact(clears - opened);
        return new BetaBinomial(unopened, infertile + INFERTILE, opened - infertile + FERTILE_BUT_CLEAR)
                .counts()
                .plusCertain(Math.toIntExact(infertile));
    }
}
