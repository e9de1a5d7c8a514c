package eggwright.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.SetName;
import eggwright.forecast.chance.Counts;
import eggwright.forecast.history.Came;
import eggwright.forecast.history.FirstCurve;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.StageKind;
import eggwright.trade.SeasonSlopes;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Seasons drawn from the model's own family: what is forecast must come as often as it says. */
class CalibrationTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 5);
    private static final SpeciesProfile PHEASANT = SpeciesProfile.of(Species.PHEASANT);

    /** Two Monte Carlo errors of a share over so many independent seasons, one forecast each. */
    private static double twoErrors(double level, int seasons) {
        return 2 * Math.sqrt(level * (1 - level) / seasons);
    }

    @Test
    void ranges_holdAsOftenAsTheySay_onSetDayAndAfterTheLook() {
        int seasons = 120;
        for (var known : SetForecast.Known.values()) {
            if (known == SetForecast.Known.PULLED) {
                continue;
            }
            int held80 = 0;
            int held95 = 0;
            for (int s = 0; s < seasons; s++) {
                var random = new SplittableRandom(1000 + s);
                var world = World.drawn(random);
                int weeks = 5 + random.nextInt(8);
                var all = new ArrayList<Passage>();
                for (int w = 0; w < weeks; w++) {
                    all.add(world.finished(w));
                }
                var truth = world.finished(weeks);
                all.add(world.asRunning(truth, known));
                var forecast = Forecaster.of(all, any -> PHEASANT).sets().getLast();
                double place = forecast.chicks().randomisedPit(truth.saleable(), random.nextDouble());
                held80 += place >= 0.1 && place <= 0.9 ? 1 : 0;
                held95 += place >= 0.025 && place <= 0.975 ? 1 : 0;
            }
            assertEquals(0.80, held80 / (double) seasons, twoErrors(0.80, seasons), known + " at 80 %");
            assertEquals(0.95, held95 / (double) seasons, twoErrors(0.95, seasons), known + " at 95 %");
        }
    }

    @Test
    void forecast_narrows_asTheLookArrives() {
        var random = new SplittableRandom(5);
        var world = World.drawn(random);
        var all = new ArrayList<Passage>();
        for (int w = 0; w < 8; w++) {
            all.add(world.finished(w));
        }
        var truth = world.finished(8);
        var before = new ArrayList<>(all);
        before.add(world.asRunning(truth, SetForecast.Known.NOT_LOOKED_AT));
        var after = new ArrayList<>(all);
        after.add(world.asRunning(truth, SetForecast.Known.LOOKED_AT));
        var wide = Forecaster.of(before, any -> PHEASANT).total();
        var narrow = Forecaster.of(after, any -> PHEASANT).total();
        assertTrue(narrow.variance() < wide.variance(), narrow.variance() + " against " + wide.variance());
    }

    @Test
    void firstForecast_isTheTradesFigure_withAWideRange() {
        var world = World.drawn(new SplittableRandom(9));
        var first = world.asRunning(world.finished(0), SetForecast.Known.NOT_LOOKED_AT);
        var chicks = Forecaster.of(List.of(first), any -> PHEASANT).total();
        // The first set goes in six weeks before the middle of the season, where the published figures hold.
        var random = new SplittableRandom(2);
        var published = FirstCurve.of(PHEASANT).later(-6);
        double expected = IntStream.range(0, 4001)
                .mapToDouble(i -> published.elsewhere(random).chicks())
                .sorted()
                .toArray()[2000];
        assertEquals(expected, chicks.quantile(0.5) / (double) first.eggsSet(), 0.02);
        var range = chicks.interval(0.95);
        assertTrue(range.high() - range.low() > 0.4 * first.eggsSet(), range.toString());
    }

    /** A farm of the model's own family: its levels as published farms differ, its scatter as the model's page states. */
    private record World(
            SplittableRandom random,
            FirstCurve farm,
            double[] look,
            double[] chick,
            double lookSpread,
            double chickSpread,
            double lookRho,
            double chickRho,
            int trays) {
        static World drawn(SplittableRandom random) {
            var published = FirstCurve.of(PHEASANT);
            var farm = published.elsewhere(random);
            double look = norm(farm.pulls(StageKind.SET_TO_FIRST_LOOK, 0, 8));
            double chick = norm(farm.pulls(StageKind.LAST_LOOK_TO_CHICK, 8, 0));
            return new World(
                    random,
                    farm,
                    walk(random, slope(published, StageKind.SET_TO_FIRST_LOOK, 0, 8), look),
                    walk(random, slope(published, StageKind.LAST_LOOK_TO_CHICK, 8, 0), chick),
                    look * Math.abs(0.25 * random.nextGaussian()),
                    chick * Math.abs(0.25 * random.nextGaussian()),
                    -0.05 * Math.log(1 - random.nextDouble()),
                    -0.05 * Math.log(1 - random.nextDouble()),
                    3 + random.nextInt(8));
        }

        /** How far a stage moves where each of its losses moves by one, independent. */
        private static double norm(double[] pulls) {
            return Math.sqrt(Arrays.stream(pulls).map(x -> x * x).sum());
        }

        private static double slope(FirstCurve curve, StageKind kind, int fromDay, int toDay) {
            return curve.later(0.5).logit(kind, fromDay, toDay)
                    - curve.later(-0.5).logit(kind, fromDay, toDay);
        }

        /** Weeks from the first set; the season's middle is the sixth. */
        private static double[] walk(SplittableRandom random, double mean, double leverage) {
            double drift = leverage * Math.abs(0.1 * random.nextGaussian());
            double slope = mean + leverage * SeasonSlopes.PUBLISHED.spread() * random.nextGaussian();
            var level = new double[20];
            double wandered = 0;
            for (int w = 0; w < level.length; w++) {
                level[w] = slope * (w - 6) + wandered;
                wandered += drift * random.nextGaussian();
            }
            return level;
        }

        Passage finished(int week) {
            double look = farm.logit(StageKind.SET_TO_FIRST_LOOK, 0, 8)
                    + this.look[week]
                    + lookSpread * random.nextGaussian();
            double chick = farm.logit(StageKind.LAST_LOOK_TO_CHICK, 8, 0)
                    + this.chick[week]
                    + chickSpread * random.nextGaussian();
            var set = new SetName(Integer.toString(week));
            var looks = new ArrayList<Came>();
            var hatches = new ArrayList<Came>();
            int saleable = 0;
            for (int t = 0; t < trays; t++) {
                int left = Counts.through(54, look, lookRho, 1, random);
                looks.add(new Came(set, Species.PHEASANT, 54, left, 1, 0, 8, Map.of()));
                if (left > 0) {
                    int chicks = Counts.through(left, chick, chickRho, 1, random);
                    hatches.add(new Came(set, Species.PHEASANT, left, chicks, 1, 8, 25, Map.of()));
                    saleable += chicks;
                }
            }
            return new Passage(
                    set,
                    Species.PHEASANT,
                    FIRST.plusWeeks(week),
                    Map.of(StageKind.SET_TO_FIRST_LOOK, looks, StageKind.LAST_LOOK_TO_CHICK, hatches),
                    List.of(),
                    0,
                    Passage.Progress.FINISHED,
                    saleable,
                    54 * trays);
        }

        Passage asRunning(Passage all, SetForecast.Known known) {
            var waiting = new ArrayList<Passage.Waiting>();
            for (var look : all.stage(StageKind.SET_TO_FIRST_LOOK)) {
                waiting.add(
                        known == SetForecast.Known.NOT_LOOKED_AT
                                ? new Passage.Waiting(Species.PHEASANT, 54, 1, 0, Map.of())
                                : new Passage.Waiting(Species.PHEASANT, look.through(), 1, 8, Map.of()));
            }
            return new Passage(
                    all.set(),
                    all.species(),
                    all.setOn(),
                    known == SetForecast.Known.NOT_LOOKED_AT
                            ? Map.of()
                            : Map.of(StageKind.SET_TO_FIRST_LOOK, all.stage(StageKind.SET_TO_FIRST_LOOK)),
                    waiting,
                    0,
                    Passage.Progress.RUNNING,
                    0,
                    all.eggsSet());
        }
    }
}
