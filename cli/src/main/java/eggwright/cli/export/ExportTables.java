package eggwright.cli.export;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every table that can be exported. */
public final class ExportTables {
    private static final List<ExportTable> ALL = Stream.of(
                    PictureTables.ALL,
                    LampTables.ALL,
                    HatchTables.ALL,
                    RoomTables.ALL,
                    SensorTables.ALL,
                    TrailTables.ALL)
            .flatMap(List::stream)
            .toList();

    private ExportTables() {}

    public static List<ExportTable> all() {
        return ALL;
    }

    public static List<String> names() {
        return ALL.stream().map(ExportTable::name).toList();
    }

    /** Empty where there is none of that name. */
    public static Optional<ExportTable> named(String name) {
        return ALL.stream().filter(t -> t.name().equals(name)).findFirst();
    }
}
