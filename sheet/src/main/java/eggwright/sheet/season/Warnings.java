package eggwright.sheet.season;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Gathers warnings, so that what is the same for many rows is said once. */
final class Warnings {
    private record About(SeasonColumn column, String text) {}

    private final Map<About, TreeSet<Integer>> rows = new LinkedHashMap<>();

    void add(SeasonRow row, SeasonColumn column, String text) {
        rows.computeIfAbsent(new About(column, text), about -> new TreeSet<>()).add(row.number());
    }

    List<Warning> all() {
        return rows.entrySet().stream()
                .map(e -> new Warning(
                        List.copyOf(e.getValue()),
                        e.getKey().column().word(),
                        e.getKey().text()))
                .sorted(java.util.Comparator.comparing(w -> w.rows().getFirst()))
                .toList();
    }
}
