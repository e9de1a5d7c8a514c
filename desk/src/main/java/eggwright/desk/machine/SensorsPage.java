package eggwright.desk.machine;

import eggwright.desk.machine.OneMachinePage.Choice;
import eggwright.desk.machine.OneMachinePage.Figure;
import eggwright.desk.machine.OneMachinePage.Link;
import eggwright.desk.machine.OneMachinePage.Table;
import java.util.List;

/**
 * The sensors of one place.
 *
 * @param lead how many there are, and how many want a look
 * @param spans how far back to say what is held back
 * @param rules how what is said of them is found out
 */
public record SensorsPage(
        String title, String lead, List<Choice> spans, List<Sensor> sensors, List<String> rules, Link back) {
    public SensorsPage {
        spans = List.copyOf(spans);
        sensors = List.copyOf(sensors);
        rules = List.copyOf(rules);
    }

    /** Why to look at it, and what to do. */
    public record Look(String what, String then) {}

    /**
     * One quantity of one sensor.
     *
     * @param tables what is held back, and what was said of it
     */
    public record Sensor(String title, List<Look> looks, List<Figure> figures, List<Link> actions, List<Table> tables) {
        public Sensor {
            looks = List.copyOf(looks);
            figures = List.copyOf(figures);
            actions = List.copyOf(actions);
            tables = List.copyOf(tables);
        }
    }
}
