package eggwright.trade;

import java.util.List;

/**
 * How fertility and losses change through a breeding season, in logits a week; losses rise where positive.
 *
 * <p>Early and middle deaths: DW2001, pheasant, both doubled over ten weeks to 8 to 9 % of fertile eggs (4.3 to 8.5 % in
 * {@code benchmarks.csv}); late ones had no trend. Fertility: FRONTE2010, red-legged partridge over 14 weeks, three ages of
 * hens: the fall of the hatch of set from the season's mean to its end, less what the embryos of DW2001 account for. The
 * spread is that of the three ages of hens; that each class spreads as much is an assumption of ours.
 *
 * @param fertility of the fertile share of eggs set
 * @param early of early deaths
 * @param mid of middle deaths
 * @param late of late deaths
 * @param spread of farms about each of these, a standard deviation
 */
public record SeasonSlopes(double fertility, double early, double mid, double late, double spread) {
    /** Hatch of set over the season and at its end, by age of hen (FRONTE2010). */
    private static final double[][] HATCH_OF_SET = {{0.747, 0.627}, {0.717, 0.629}, {0.703, 0.675}};

    private static final double WEEKS_FROM_MIDDLE_TO_END = 7;
    /** Early, and as many middle, deaths at the start and the end of ten weeks (DW2001). */
    private static final double DEATHS_AT_FIRST = 0.043;

    private static final double DEATHS_AT_LAST = 0.085;
    private static final double WEEKS_OF_DEATHS = 10;

    public static final SeasonSlopes PUBLISHED = published();

    private static SeasonSlopes published() {
        double deaths = (logit(DEATHS_AT_LAST) - logit(DEATHS_AT_FIRST)) / WEEKS_OF_DEATHS;
        double mean = 0;
        for (var hens : HATCH_OF_SET) {
            mean += slope(hens) / HATCH_OF_SET.length;
        }
        double squares = 0;
        for (var hens : HATCH_OF_SET) {
            squares += Math.pow(slope(hens) - mean, 2) / (HATCH_OF_SET.length - 1);
        }
        var guess = SpeciesProfile.of(Species.PHEASANT).losses();
        double fertile = 1 - guess.infertileOfSet().value();
        double early = guess.earlyDeadOfFertile().value();
        double mid = guess.midDeadOfFertile().value();
        double hatch = 1;
        for (double loss : List.of(
                early,
                mid,
                guess.lateDeadOfFertile().value(),
                guess.pippedDeadOfFertile().value())) {
            hatch -= loss;
        }
        // In shares lost a week: of the hatch of set, and of that the embryos' part; the rest is fertility's.
        double ofSet = mean * (1 - fertile * hatch);
        double embryos = -deaths * (early * (1 - early) + mid * (1 - mid)) / hatch;
        return new SeasonSlopes((ofSet - embryos) / (1 - fertile), deaths, deaths, 0, Math.sqrt(squares));
    }

    private static double slope(double[] hens) {
        return (logit(hens[1]) - logit(hens[0])) / WEEKS_FROM_MIDDLE_TO_END;
    }

    private static double logit(double share) {
        return Math.log(share / (1 - share));
    }
}
