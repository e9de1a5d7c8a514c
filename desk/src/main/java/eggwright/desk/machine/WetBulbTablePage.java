package eggwright.desk.machine;

import java.util.List;

/**
 * Humidity by dry and wet bulb, to be printed and hung beside the machine.
 *
 * @param place for which altitude
 * @param notes how to read it, and what it does not allow for
 */
public record WetBulbTablePage(String place, String back, List<Table> tables, List<String> notes) {
    public WetBulbTablePage {
        tables = List.copyOf(tables);
        notes = List.copyOf(notes);
    }

    /**
     * One table.
     *
     * @param dry across the top
     */
    public record Table(String title, List<String> dry, List<Row> rows) {
        public Table {
            dry = List.copyOf(dry);
            rows = List.copyOf(rows);
        }
    }

    /**
     * One wet bulb.
     *
     * @param humidities under each dry bulb; empty where no air shows that pair
     */
    public record Row(String wet, List<String> humidities) {
        public Row {
            humidities = List.copyOf(humidities);
        }
    }
}
