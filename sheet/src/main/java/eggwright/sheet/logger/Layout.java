package eggwright.sheet.logger;

import eggwright.climate.reading.SensorName;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where in a row each thing stands. */
final class Layout {
    /**
     * A column that holds readings.
     *
     * @param sensor the column's own name where several columns hold the same quantity; empty where one does
     */
    record ValueAt(int index, String name, ColumnUse.Value use, Optional<SensorName> sensor) {}

    private final int time;
    private final int date;
    private final int clock;
    private final int machine;
    private final int sensor;
    private final List<ValueAt> values = new ArrayList<>();

    Layout(List<String> header, Map<String, ColumnUse> uses) {
        int timeAt = -1;
        int dateAt = -1;
        int clockAt = -1;
        int machineAt = -1;
        int sensorAt = -1;
        for (int i = 0; i < header.size(); i++) {
            switch (uses.getOrDefault(header.get(i), new ColumnUse.Left())) {
                case ColumnUse.Time() -> timeAt = i;
                case ColumnUse.Date() -> dateAt = i;
                case ColumnUse.Clock() -> clockAt = i;
                case ColumnUse.Machine() -> machineAt = i;
                case ColumnUse.Sensor() -> sensorAt = i;
                case ColumnUse.Value use -> {
                    long alike = header.stream()
                            .filter(n -> uses.get(n) instanceof ColumnUse.Value v && v.quantity() == use.quantity())
                            .count();
                    values.add(new ValueAt(
                            i,
                            header.get(i),
                            use,
                            alike > 1 ? Optional.of(new SensorName(header.get(i))) : Optional.empty()));
                }
                case ColumnUse.Left() -> {}
            }
        }
        time = timeAt;
        date = dateAt;
        clock = clockAt;
        machine = machineAt;
        sensor = sensorAt;
    }

    List<ValueAt> values() {
        return values;
    }

    /** When a row was read, as written; empty where nothing is, or where the columns do not say. */
    Optional<String> time(LoggerRows.Row row) {
        if (time >= 0) {
            return cell(row, time);
        }
        if (date < 0 || clock < 0) {
            return Optional.empty();
        }
        return cell(row, date).flatMap(d -> cell(row, clock).map(c -> d + " " + c));
    }

    Optional<String> machine(LoggerRows.Row row) {
        return machine < 0 ? Optional.empty() : cell(row, machine);
    }

    boolean namesMachines() {
        return machine >= 0;
    }

    Optional<String> sensor(LoggerRows.Row row) {
        return sensor < 0 ? Optional.empty() : cell(row, sensor);
    }

    private static Optional<String> cell(LoggerRows.Row row, int index) {
        if (index >= row.cells().size()) {
            return Optional.empty();
        }
        var text = row.cells().get(index);
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
