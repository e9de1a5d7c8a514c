package eggwright.testkit.walls;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The map that {@code docs/architecture.md} draws: which room may use which. A new room, or a new arrow, is drawn here
 * and there before its pom may have it.
 */
public final class MapOfRooms {
    private static final Set<String> CORE = Set.of(
            "units",
            "egg",
            "trade",
            "book",
            "stats",
            "rates",
            "forecast",
            "today",
            "findings",
            "climate",
            "plan",
            "invented");
    private static final Set<String> CORE_LIBRARIES = Set.of("org.jspecify", "org.hipparchus");

    /** Arrows beside the one to {@code units}, which every room may use. */
    private static final Map<String, Set<String>> ARROWS = Map.ofEntries(
            Map.entry("units", Set.of()),
            Map.entry("egg", Set.of()),
            Map.entry("trade", Set.of()),
            Map.entry("book", Set.of("trade")),
            Map.entry("stats", Set.of()),
            Map.entry("rates", Set.of("book", "stats", "trade")),
            Map.entry("forecast", Set.of("rates", "book", "stats", "trade")),
            Map.entry("today", Set.of("book", "trade")),
            Map.entry("findings", Set.of("rates", "book", "stats", "trade")),
            Map.entry("climate", Set.of("book", "egg", "stats", "trade")),
            Map.entry("plan", Set.of("forecast", "book", "stats", "trade")),
            Map.entry("invented", Set.of("book", "stats", "trade")),
            Map.entry("wire", Set.of("book", "trade")),
            Map.entry("store", Set.of("book", "climate", "wire")),
            Map.entry("sheet", Set.of("wire", "book", "climate", "trade")),
            Map.entry("intake", Set.of("book", "climate", "sheet")),
            Map.entry("desk", with(CORE, "wire", "sheet", "intake")),
            Map.entry("cli", with(CORE, "wire", "store", "sheet", "intake", "desk")),
            Map.entry("testkit-walls", Set.of()),
            Map.entry("testkit-contracts", Set.of("book")));

    private MapOfRooms() {}

    /** What in these rooms is not on the map; empty where all is. */
    public static List<String> breaches(List<Room> rooms) {
        var breaches = new ArrayList<String>();
        for (var room : rooms) {
            var allowed = ARROWS.get(room.name());
            if (allowed == null) {
                breaches.add(room.name() + " is not on the map of rooms");
                continue;
            }
            for (var used : new TreeSet<>(room.uses())) {
                if (!used.equals("units") && !allowed.contains(used)) {
                    breaches.add(room.name() + " may not use " + used);
                }
            }
            breaches.addAll(misplaced(room));
        }
        return breaches;
    }

    private static List<String> misplaced(Room room) {
        return switch (room.place()) {
            case EDGE ->
                CORE.contains(room.name())
                        ? List.of(room.name() + " is a core room, but its pom is no child of the core's")
                        : List.of();
            case CORE ->
                room.libraries().stream()
                        .filter(library -> CORE_LIBRARIES.stream().noneMatch(group -> library.startsWith(group + ":")))
                        .sorted()
                        .map(library -> room.name() + " is a core room and may not use " + library)
                        .toList();
        };
    }

    private static Set<String> with(Set<String> rooms, String... more) {
        var all = new TreeSet<>(rooms);
        all.addAll(List.of(more));
        return all;
    }
}
