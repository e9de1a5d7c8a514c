package eggwright.desk.rate;

import eggwright.rates.Contrast;
import eggwright.rates.Contrasts;
import eggwright.rates.Dimension;
import eggwright.rates.FertilityRanking;
import eggwright.rates.GroupRates;
import eggwright.rates.RateReport;
import eggwright.units.Rate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Groups side by side in one figure that means the same in all of them.
 *
 * @param by how they were grouped
 * @param figure which of the rates stands there
 * @param groups those that have it; joint groups last, uncompared
 * @param normal the farm's own, as wide as trays here scatter; empty where nothing was counted
 * @param leftOut keys of groups that this figure says nothing of, though their fertility was seen otherwise
 */
record Comparison(
        Dimension by, Figure figure, List<Compared> groups, Optional<Compared.Share> normal, List<String> leftOut) {
    private static final double LEVEL = 0.95;

    /** What stands in a picture, and on what it stands. */
    enum Figure {
        FERTILITY_OPENED,
        FERTILITY_APPARENT,
        FERTILITY_CORRECTED,
        FERTILITY_BY_THE_LAMP,
        HATCH_OF_FERTILE
    }

    Comparison {
        groups = List.copyOf(groups);
        leftOut = List.copyOf(leftOut);
    }

    /** The fertility that these groups have in common: apparent and opened never stand in one row uncorrected. */
    static Comparison fertility(RateReport report, Contrasts contrasts, Dimension by) {
        return switch (report.ranking()) {
            case FertilityRanking.AsCounted(var basis) ->
                switch (basis) {
                    case OPENED -> counted(report, contrasts, by, Figure.FERTILITY_OPENED, GroupRates::fertility);
                    case APPARENT -> counted(report, contrasts, by, Figure.FERTILITY_APPARENT, GroupRates::fertility);
                    case MIXED -> corrected(report, contrasts, by);
                };
            case FertilityRanking.Corrected corrected -> corrected(report, contrasts, by);
            case FertilityRanking.AtTheLamp lamp ->
                counted(report, contrasts, by, Figure.FERTILITY_BY_THE_LAMP, GroupRates::apparentFertility);
            case FertilityRanking.Not(var neverOpened, var neverLookedAt) ->
                counted(report, contrasts, by, Figure.FERTILITY_BY_THE_LAMP, GroupRates::apparentFertility)
                        .without(neverLookedAt);
            case FertilityRanking.NothingSeen nothing ->
                new Comparison(by, Figure.FERTILITY_APPARENT, List.of(), Optional.empty(), List.of());
        };
    }

    static Comparison hatch(RateReport report, Contrasts contrasts, Dimension by) {
        return counted(report, contrasts, by, Figure.HATCH_OF_FERTILE, GroupRates::hatchOfFertile);
    }

    private static Comparison counted(
            RateReport report, Contrasts contrasts, Dimension by, Figure figure, Function<GroupRates, Rate> rate) {
        var groups = report.groups().stream()
                .filter(g -> !rate.apply(g).isEmpty())
                .map(g -> new Compared(g, rate.apply(g), Compared.Share.of(rate.apply(g)), contrast(contrasts, g)))
                .toList();
        var whole = rate.apply(report.total());
        var normal = contrasts.scatter().interval(whole, LEVEL);
        return new Comparison(
                by,
                figure,
                groups,
                whole.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Compared.Share(whole.pct(), 100 * normal.low(), 100 * normal.high())),
                List.of());
    }

    private static Comparison corrected(RateReport report, Contrasts contrasts, Dimension by) {
        var groups = report.groups().stream()
                .filter(g -> !g.fertility().isEmpty())
                .map(g -> new Compared(g, g.fertility(), correctedShare(g), contrast(contrasts, g)))
                .toList();
        var normal = report.total().fertility().isEmpty()
                ? Optional.<Compared.Share>empty()
                : Optional.of(correctedShare(report.total()));
        return new Comparison(by, Figure.FERTILITY_CORRECTED, groups, normal, List.of());
    }

    /** As counted where no clear was opened because there was none. */
    static Compared.Share correctedShare(GroupRates group) {
        var corrected = group.trueFertility();
        return corrected == null
                ? Compared.Share.of(group.fertility())
                : new Compared.Share(100 * corrected.estimate(), 100 * corrected.low(), 100 * corrected.high());
    }

    private static Optional<Contrast> contrast(Contrasts contrasts, GroupRates group) {
        return contrasts.contrasts().stream()
                .filter(c -> !group.isJoint() && c.key().equals(group.key()))
                .findFirst();
    }

    private Comparison without(List<String> keys) {
        return new Comparison(by, figure, groups, normal, keys);
    }

    /** Single groups, which can be compared. */
    List<Compared> single() {
        return groups.stream().filter(c -> !c.group().isJoint()).toList();
    }
}
