package eggwright.stats.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ControlChartTest {
    private static final List<Rate> NONE = Collections.nCopies(5, new Rate(0, 54));

    @Test
    void chart_findsNothing_whenNoneOrAllDid() {
        for (var counts : List.of(NONE, Collections.nCopies(5, new Rate(54, 54)))) {
            var chart = ControlChart.overdispersed(counts, Baseline.of(counts), 3);
            assertTrue(chart.points().stream().noneMatch(ControlChart.Point::outside));
        }
    }

    @Test
    void chart_passesOverAWeekWithoutEggs() {
        var counts = List.of(new Rate(45, 54), new Rate(0, 0), new Rate(44, 54), new Rate(46, 54));
        var without = List.of(new Rate(45, 54), new Rate(44, 54), new Rate(46, 54));
        assertEquals(Baseline.of(without), Baseline.of(counts));
        var empty = ControlChart.plain(counts, Baseline.of(counts), 3).points().get(1);
        assertTrue(Double.isNaN(empty.value()));
        assertEquals(new ControlChart.Point(2, empty.value(), 0, 1, false), empty);
        var running = ControlChart.ewma(counts, Baseline.of(counts), 0.2, 3, 1).points();
        assertEquals(running.get(0).value(), running.get(1).value());
    }

    /** Trays that scatter three times as much as luck raise no alarm on the chart that knows it. */
    @Test
    void overdispersed_staysQuiet_whenTraysAlwaysScatter() {
        var counts = List.of(
                new Rate(500, 1000),
                new Rate(560, 1000),
                new Rate(440, 1000),
                new Rate(555, 1000),
                new Rate(448, 1000));
        assertTrue(ControlChart.plain(counts, Baseline.of(counts), 3).points().stream()
                .anyMatch(ControlChart.Point::outside));
        assertFalse(ControlChart.overdispersed(counts, Baseline.of(counts), 3).points().stream()
                .anyMatch(ControlChart.Point::outside));
    }

    @Test
    void chart_refusesWhatItCannotTell() {
        assertThrows(OutOfRange.class, () -> Baseline.of(List.of(new Rate(0, 0))));
        var one = List.of(new Rate(45, 54));
        assertThrows(OutOfRange.class, () -> ControlChart.overdispersed(one, Baseline.of(one), 3));
        assertThrows(OutOfRange.class, () -> ControlChart.plain(one, Baseline.of(one), 0));
        assertThrows(OutOfRange.class, () -> ControlChart.ewma(one, Baseline.of(one), 0, 3, 1));
        assertThrows(OutOfRange.class, () -> ControlChart.ewma(one, Baseline.of(one), Double.NaN, 3, 1));
    }
}
