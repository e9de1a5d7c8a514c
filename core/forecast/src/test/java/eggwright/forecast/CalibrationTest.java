package eggwright.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.SetName;
import eggwright.forecast.history.Came;
import eggwright.forecast.history.FirstCurve;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.StageKind;
import eggwright.forecast.level.Counts;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Seasons drawn from the model's own family: what is forecast must come as often as it says. */
class CalibrationTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 5);
    private static final SpeciesProfile PHEASANT = SpeciesProfile.of(Species.PHEASANT);

    /** Two Monte Carlo errors of a share of 0.80 over so many independent seasons, one forecast each. */
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
        double expected = first.eggsSet() * FirstCurve.of(PHEASANT).chicks();
        assertEquals(expected, chicks.quantile(0.5), 0.12 * first.eggsSet());
        var range = chicks.interval(0.95);
        assertTrue(range.high() - range.low() > 0.4 * first.eggsSet(), range.toString());
    }

    /** A farm with a level, a drift, sets and trays that scatter. */
    private record World(
            SplittableRandom random,
            double[] look,
            double[] chick,
            double setSpread,
            double trayRho,
            int trays,
            FirstCurve curve) {
        static World drawn(SplittableRandom random) {
            double drift = List.of(0.0, 0.06, 0.14).get(random.nextInt(3));
            return new World(
                    random,
                    walk(random, drift),
                    walk(random, drift),
                    0.05 + 0.4 * random.nextDouble(),
                    0.04 * random.nextDouble(),
                    3 + random.nextInt(8),
                    FirstCurve.of(PHEASANT));
        }

        private static double[] walk(SplittableRandom random, double drift) {
            var level = new double[20];
            level[0] = 0.8 * random.nextGaussian();
            for (int w = 1; w < level.length; w++) {
                level[w] = level[w - 1] + drift * random.nextGaussian();
            }
            return level;
        }

        Passage finished(int week) {
            double look = logit(curve.through(StageKind.SET_TO_FIRST_LOOK, 0, 8))
                    + this.look[week]
                    + setSpread * random.nextGaussian();
            double chick = logit(curve.through(StageKind.LAST_LOOK_TO_CHICK, 8, 25))
                    + this.chick[week]
                    + setSpread * random.nextGaussian();
            var set = new SetName(Integer.toString(week));
            var looks = new ArrayList<Came>();
            var hatches = new ArrayList<Came>();
            int saleable = 0;
            for (int t = 0; t < trays; t++) {
                int left = Counts.through(54, look, trayRho, 1, random);
                looks.add(new Came(set, 54, left, 1, 0, 8, Map.of()));
                if (left > 0) {
                    int chicks = Counts.through(left, chick, trayRho, 1, random);
                    hatches.add(new Came(set, left, chicks, 1, 8, 25, Map.of()));
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
                                ? new Passage.Waiting(54, 1, 0, Map.of())
                                : new Passage.Waiting(look.through(), 1, 8, Map.of()));
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

        private static double logit(double p) {
            return Math.log(p / (1 - p));
        }
    }
}
