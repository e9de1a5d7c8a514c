package eggwright.desk.machine;

import eggwright.desk.machine.OneMachinePage.Choice;
import eggwright.desk.machine.OneMachinePage.Link;
import eggwright.desk.machine.OneMachinePage.Table;
import eggwright.desk.picture.ClimateChart;
import java.time.Instant;
import java.util.List;

/**
 * What was read in a window of time.
 *
 * @param spans how much of the past to show
 * @param turns earlier and later
 * @param window from when to when
 * @param shown the same for a script, as instants
 * @param none said where nothing was read; empty where something was
 * @param doubt how much is held back and silent, in a few words; empty where there is no sensor
 */
public record ReadingsShown(
        List<Choice> spans,
        List<Link> turns,
        String window,
        At shown,
        String none,
        List<ClimateChart> charts,
        String doubt,
        List<Table> care) {
    public ReadingsShown {
        spans = List.copyOf(spans);
        turns = List.copyOf(turns);
        charts = List.copyOf(charts);
        care = List.copyOf(care);
    }

    /**
     * A window in the words of machines.
     *
     * @param first when anything was first read
     */
    public record At(String span, Instant from, Instant to, Instant now, Instant first) {}
}
