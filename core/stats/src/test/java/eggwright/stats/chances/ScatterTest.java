package eggwright.stats.chances;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import eggwright.stats.interval.Intervals;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Eggs in boxes at five places, Manly 1978; answers from scipy 1.17.1, as SOURCES.md tells. */
class ScatterTest {
    private static final double AS_SCIPY = 1e-9;

    private static Map<String, List<Rate>> places() {
        var places = new TreeMap<String, List<Rate>>();
        for (var row : ReferenceTable.read("chances/trout.csv")) {
            places.computeIfAbsent(row.text("location"), p -> new ArrayList<>())
                    .add(new Rate(row.count("surviving_n"), row.count("eggs_n")));
        }
        return places;
    }

    private static Rate sum(List<Rate> rates) {
        return rates.stream().reduce(new Rate(0, 0), Rate::plus);
    }

    @Test
    void scatter_agreesWithScipy_onTheTroutEggs() {
        var scatter = Scatter.within(List.copyOf(places().values()));
        assertEquals(196.6382910126826, scatter.pearson(), AS_SCIPY);
        assertEquals(15, scatter.degreesOfFreedom());
        assertEquals(13.109219400845507, scatter.factor(), AS_SCIPY);
    }

    @Test
    void chance_agreesWithScipy_ofPlacesAgainstTheRest() {
        var places = places();
        var scatter = Scatter.within(List.copyOf(places.values()));
        var all = sum(places.values().stream().flatMap(List::stream).toList());
        double[] expected = {
            0.01296899369431423, 0.029168778894847053, 0.2882017944726798, 0.14351963109982824, 9.51528294432607e-07
        };
        for (int place = 1; place <= 5; place++) {
            var one = sum(places.getOrDefault(Integer.toString(place), List.of()));
            var rest = new Rate(all.count() - one.count(), all.of() - one.of());
            assertEquals(expected[place - 1], scatter.chance(one, rest), AS_SCIPY, "place " + place);
        }
    }

    @Test
    void interval_isWilsons_whenTraysScatterNoMoreThanLuck() {
        var scatter = Scatter.within(List.of(List.of(new Rate(25, 50), new Rate(25, 50), new Rate(25, 50))));
        var rate = new Rate(75, 150);
        assertEquals(1, scatter.factor());
        assertEquals(
                Intervals.wilson95(rate).low(), scatter.interval(rate, 0.95).low(), 1e-15);
        assertEquals(
                Intervals.wilson95(rate).high(), scatter.interval(rate, 0.95).high(), 1e-15);
    }

    @Test
    void interval_isWider_whenTraysScatter() {
        var scatter = Scatter.within(List.copyOf(places().values()));
        var rate = new Rate(78, 432);
        var plain = Intervals.wilson95(rate);
        var wide = scatter.interval(rate, 0.95);
        assertTrue(wide.low() < plain.low() && wide.high() > plain.high());
    }

    @Test
    void chance_isRefused_whenNoTrayCanBeComparedWithAnother() {
        var scatter = Scatter.within(List.of(List.of(new Rate(40, 50)), List.of(new Rate(30, 50))));
        assertThrows(OutOfRange.class, () -> scatter.chance(new Rate(40, 50), new Rate(30, 50)));
    }
}
