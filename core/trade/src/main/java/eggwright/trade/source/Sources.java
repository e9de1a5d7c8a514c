package eggwright.trade.source;

import eggwright.trade.table.CsvTable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The register of what was read: every key of the trade's tables, with its reference and address.
 *
 * <p>Immutable; read once, when a value is first asked for.
 */
public final class Sources {
    /** What kind of publication stands behind a key. */
    public enum Kind {
        /** An extension service or university table, made to be followed. */
        GUIDE,
        /** A trial, survey or review: what one place measured, or what several did. */
        STUDY,
        /** Law, government or guideline. */
        LAW
    }

    private record Line(Kind kind, Source.Published source) {}

    private static final Sources SHIPPED = new Sources(CsvTable.beside(Sources.class, "/eggwright/trade/sources.csv"));

    private final Map<String, Line> byKey;

    private Sources(CsvTable table) {
        var lines = new LinkedHashMap<String, Line>();
        for (var row : table.rows()) {
            var key = cell(row, "key");
            var kind = switch (cell(row, "kind")) {
                case "guide" -> Kind.GUIDE;
                case "study" -> Kind.STUDY;
                case "law" -> Kind.LAW;
                default -> throw new IllegalStateException("Source " + key + " has no kind");
            };
            var source = new Source.Published(
                    key, cell(row, "reference"), cell(row, "address"), evidenceOfGrade(cell(row, "grade")));
            lines.put(key, new Line(kind, source));
        }
        byKey = java.util.Collections.unmodifiableMap(lines);
    }

    /** The register that ships with the program. */
    public static Sources shipped() {
        return SHIPPED;
    }

    /** All publications, in the order of the register. */
    public Collection<Source.Published> all() {
        return byKey.values().stream().map(Line::source).toList();
    }

    /** The publication of a key; empty where the register does not hold it. */
    public Optional<Source.Published> named(String key) {
        return Optional.ofNullable(byKey.get(key)).map(Line::source);
    }

    /** What kind of publication a key is; empty where the register does not hold it. */
    public Optional<Kind> kindOf(String key) {
        return Optional.ofNullable(byKey.get(key)).map(Line::kind);
    }

    /**
     * Reads a cell such as {@code CETIN1997; NAGY2013} or {@code from memory; compare ILL-18}.
     *
     * @throws IllegalStateException if a key is not in the register: a fault of our own tables
     */
    public List<Source> read(String cell) {
        var sources = new ArrayList<Source>();
        for (var part : cell.split(";", -1)) {
            var key = part.strip().replaceFirst("^compare ", "");
            switch (key) {
                case "from memory", "MEMORY" -> sources.add(new Source.FromMemory());
                case "common practice, no source" -> sources.add(new Source.CommonPractice());
                default ->
                    sources.add(named(key)
                            .orElseThrow(() -> new IllegalStateException("No source is registered under " + key)));
            }
        }
        return List.copyOf(sources);
    }

    /** S seen, P part of it seen (nothing else of it was used), C seen in a copy, R recalled; the first letter counts. */
    private static Evidence evidenceOfGrade(String grade) {
        return switch (grade.charAt(0)) {
            case 'S', 'P' -> Evidence.SEEN;
            case 'C' -> Evidence.SEEN_IN_A_COPY;
            case 'R' -> Evidence.RECALLED;
            default -> throw new IllegalStateException("Unknown grade: " + grade);
        };
    }

    private static String cell(Map<String, String> row, String column) {
        var cell = row.get(column);
        if (cell == null) {
            throw new IllegalStateException("The register of sources has a line without " + column + ": " + row);
        }
        return cell;
    }
}
