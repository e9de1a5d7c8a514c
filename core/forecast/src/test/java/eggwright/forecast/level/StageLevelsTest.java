package eggwright.forecast.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.PenName;
import eggwright.forecast.chance.Grid;
import eggwright.forecast.chance.Kernel;
import eggwright.forecast.chance.LuckScale;
import eggwright.forecast.history.FirstCurve;
import eggwright.forecast.history.StageKind;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class StageLevelsTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 5);
    private static final int DRAWS = 20_000;
    private static final double PUBLISHED = 1.4;
    private static final Pen ORCHARD = new Pen(Species.PHEASANT, new PenName("Orchard"));
    private static final Pen NEW = new Pen(Species.PHEASANT, new PenName("New"));
    private static final Pen DITCH = new Pen(Species.PHEASANT, new PenName("Ditch"));

    /** Farms far from a normal: many near the published level, some far below. */
    private static Beforehand skewed() {
        var random = new SplittableRandom(1);
        var farms = new double[5000];
        for (int i = 0; i < farms.length; i++) {
            farms[i] = 0.3 - 0.7 * Math.exp(0.6 * random.nextGaussian());
        }
        return new Beforehand(LuckScale.even(), Grid.density(farms, 0.12), 0.03, new double[] {0.6, 0.3}, 0.9);
    }

    private static Observed set(int week, Map<Species, List<Observed.Count>> counts) {
        var parts = new TreeMap<Species, Observed.Part>();
        counts.forEach((species, mine) -> parts.put(species, new Observed.Part(week - 6, mine, Set.of())));
        return new Observed(FIRST.plusWeeks(week), parts);
    }

    private static Observed.Count tray(int through) {
        return new Observed.Count(54, through, 1, PUBLISHED, Map.of());
    }

    private record Moments(double mean, double spread) {}

    private static Moments moments(double[] weights) {
        double total = 0;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < Grid.POINTS; i++) {
            total += weights[i];
            sum += weights[i] * Grid.at(i);
            squares += weights[i] * Grid.at(i) * Grid.at(i);
        }
        return new Moments(sum / total, Math.sqrt(squares / total - Math.pow(sum / total, 2)));
    }

    private static Moments drawn(StageLevels levels, int set, Species species) {
        var draws = levels.draw(DRAWS, 0, 5);
        double sum = 0;
        double squares = 0;
        var eggs = draws.eggs(set, species, PUBLISHED, Map.of());
        for (int i = 0; i < DRAWS; i++) {
            sum += eggs.offset(i);
            squares += Math.pow(eggs.offset(i), 2);
        }
        return new Moments(sum / DRAWS, Math.sqrt(squares / DRAWS - Math.pow(sum / DRAWS, 2)));
    }

    /**
     * One set of three trays, summed point by point on a grid over level, set and every guess: no normal stands for anything
     * there. Both for ordinary trays and for trays of which nearly every egg came through, whose likelihood is far from a normal.
     */
    @Test
    void draws_lieAsASumOverAllSays_withOneSet() {
        for (var counts : List.of(List.of(tray(40), tray(45), tray(33)), List.of(tray(54), tray(54), tray(53)))) {
            var before = skewed();
            var expected = new double[Grid.POINTS];
            double squared = before.inCommon(before);
            for (var trays : Scatter.trays()) {
                var logs = new Likelihood(LuckScale.even(), counts, trays.value() * before.likeness()).logs()[0];
                for (var spread : Scatter.sets()) {
                    double variance = squared * (Math.pow(spread.value(), 2) + Math.pow(0.03 * 6, 2));
                    var beforehand = Kernel.of(Math.sqrt(variance)).spread(before.level());
                    for (int i = 0; i < Grid.POINTS; i++) {
                        expected[i] += trays.chance() * spread.chance() * beforehand[i] * Math.exp(logs[i] + 60);
                    }
                }
            }
            var sum = moments(expected);
            var drawn = drawn(
                    StageLevels.of(
                            List.of(set(0, Map.of(Species.PHEASANT, counts))),
                            new TreeMap<>(Map.of(Species.PHEASANT, before))),
                    0,
                    Species.PHEASANT);
            // Three Monte Carlo errors of the draws, and the grid's own width.
            assertEquals(sum.mean(), drawn.mean(), 0.015, counts::toString);
            assertEquals(sum.spread(), drawn.spread(), 0.015, counts::toString);
        }
    }

    /** As the farms drawn from the published spread, whose levels are no normal. */
    @Test
    void draws_lieAsPublishedFarms_whereNothingWasCounted() {
        for (var species : List.of(Species.PHEASANT, Species.CHUKAR)) {
            for (var kind : List.of(StageKind.SET_TO_FIRST_LOOK, StageKind.LAST_LOOK_TO_CHICK)) {
                int from = kind == StageKind.SET_TO_FIRST_LOOK ? 0 : 8;
                var before = published(species, kind, from);
                var drawn = drawn(
                        StageLevels.of(
                                List.of(set(6, Map.of(species, List.of()))), new TreeMap<>(Map.of(species, before))),
                        0,
                        species);
                var published = moments(before.level());
                assertEquals(published.mean(), drawn.mean(), 0.02, species + " " + kind);
                double own = 0.25 * 0.25 * before.inCommon(before);
                assertEquals(
                        Math.sqrt(Math.pow(published.spread(), 2) + own), drawn.spread(), 0.02, species + " " + kind);
            }
        }
    }

    private static Beforehand published(Species species, StageKind kind, int from) {
        var curve = FirstCurve.of(SpeciesProfile.of(species));
        var random = new SplittableRandom(2);
        var farms = new double[5000];
        for (int i = 0; i < farms.length; i++) {
            farms[i] = curve.elsewhere(random).logit(kind, from, 8) - curve.logit(kind, from, 8);
        }
        return new Beforehand(
                LuckScale.even(),
                Grid.density(farms, 0.12),
                0.03,
                curve.pulls(kind, from, 8),
                curve.likeness(kind, from, 8));
    }

    /** A poor set is poor for all that lay in it: of the chukar nothing was counted that week. */
    @Test
    void otherSpecies_tellsOfTheSet() {
        double good = chukarBeside(46);
        double poor = chukarBeside(25);
        assertTrue(poor < good - 0.1, poor + " beside poor, " + good + " beside good");
    }

    private static double chukarBeside(int pheasant) {
        var sets = new ArrayList<Observed>();
        for (int week = 0; week < 5; week++) {
            sets.add(set(
                    week,
                    Map.of(
                            Species.PHEASANT,
                            List.of(tray(44), tray(45), tray(43)),
                            Species.CHUKAR,
                            List.of(tray(43), tray(45)))));
        }
        var trays = List.of(tray(pheasant), tray(pheasant + 1), tray(pheasant - 1));
        sets.add(set(5, Map.of(Species.PHEASANT, trays, Species.CHUKAR, List.of())));
        var levels = StageLevels.of(sets, new TreeMap<>(Map.of(Species.PHEASANT, skewed(), Species.CHUKAR, skewed())));
        return drawn(levels, 5, Species.CHUKAR).mean();
    }

    /** Both pens lie as their trays do, and one of which nothing was counted may lie anywhere. */
    @Test
    void pens_areAsSureAsTheirCounts() {
        var sets = new ArrayList<Observed>();
        for (int week = 0; week < 6; week++) {
            var part = new Observed.Part(
                    week - 6,
                    List.of(
                            new Observed.Count(54, 48, 1, PUBLISHED, Map.of(ORCHARD, 1.0)),
                            new Observed.Count(54, 36, 1, PUBLISHED, Map.of(DITCH, 1.0))),
                    Set.of(NEW));
            sets.add(new Observed(FIRST.plusWeeks(week), Map.of(Species.PHEASANT, part)));
        }
        var draws = StageLevels.of(sets, new TreeMap<>(Map.of(Species.PHEASANT, skewed())))
                .draw(DRAWS, 0, 5);
        var any = draws.eggs(5, Species.PHEASANT, PUBLISHED, Map.of());
        var orchard = draws.eggs(5, Species.PHEASANT, PUBLISHED, Map.of(ORCHARD, 1.0));
        var ditch = draws.eggs(5, Species.PHEASANT, PUBLISHED, Map.of(DITCH, 1.0));
        var fresh = draws.eggs(5, Species.PHEASANT, PUBLISHED, Map.of(NEW, 1.0));
        var difference = new double[DRAWS];
        var unknown = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            difference[i] = orchard.offset(i) - ditch.offset(i);
            unknown[i] = fresh.offset(i) - any.offset(i);
        }
        double counted = Math.log(48.0 / 6) - Math.log(36.0 / 18);
        assertEquals(counted, mean(difference), 0.35);
        assertTrue(spread(difference) < 0.35, "" + spread(difference));
        assertEquals(0, mean(unknown), 0.03);
        assertTrue(spread(unknown) > 0.2, "" + spread(unknown));
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(0);
    }

    private static double spread(double[] values) {
        double mean = mean(values);
        return Math.sqrt(Arrays.stream(values)
                .map(v -> (v - mean) * (v - mean))
                .average()
                .orElse(0));
    }
}
