package eggwright.sheet.logger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What each column of a file holds, by its name in the header. As text: {@code Timestamp=time,Temp=air_temperature_f}, as
 * a person writes it and as it is remembered. A name with a comma or an equals sign stands in quotation marks.
 */
public record LoggerColumns(Map<String, ColumnUse> byName) {
    public LoggerColumns {
        byName = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byName));
    }

    /** What came of reading the text. */
    public sealed interface Parsed {
        record Whole(LoggerColumns columns) implements Parsed {}

        /** @param why a sentence that says what would be right */
        record Wrong(String why) implements Parsed {}
    }

    public static Parsed parse(String text) {
        var uses = new LinkedHashMap<String, ColumnUse>();
        for (var part : parts(text)) {
            int cut = part.lastIndexOf('=');
            if (cut <= 0) {
                return new Parsed.Wrong("\"" + part
                        + "\" says of no column what it holds. Write Timestamp=time,Temp=air_temperature_f.");
            }
            var word = part.substring(cut + 1).strip();
            var use = ColumnUse.ofWord(word);
            if (use.isEmpty()) {
                return new Parsed.Wrong(
                        "\"" + word + "\" is nothing that a column can hold. Write one of " + ColumnUse.words() + ".");
            }
            var name = unquoted(part.substring(0, cut).strip());
            if (uses.putIfAbsent(name, use.get()) != null) {
                return new Parsed.Wrong("Column \"" + name + "\" is named twice. Name it once.");
            }
        }
        return uses.isEmpty()
                ? new Parsed.Wrong("No column is named. Write Timestamp=time,Temp=air_temperature_f.")
                : new Parsed.Whole(new LoggerColumns(uses));
    }

    private static List<String> parts(String text) {
        var parts = new ArrayList<String>();
        var part = new StringBuilder();
        var quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            }
            if (c == ',' && !quoted) {
                parts.add(part.toString().strip());
                part.setLength(0);
            } else {
                part.append(c);
            }
        }
        parts.add(part.toString().strip());
        parts.removeIf(String::isEmpty);
        return parts;
    }

    private static String unquoted(String name) {
        return name.length() > 1 && name.startsWith("\"") && name.endsWith("\"")
                ? name.substring(1, name.length() - 1)
                : name;
    }

    /** The form that {@link #parse} reads. */
    public String text() {
        return byName.entrySet().stream()
                .map(one -> quoted(one.getKey()) + "=" + one.getValue().word())
                .collect(Collectors.joining(","));
    }

    private static String quoted(String name) {
        return name.contains(",") || name.contains("=") || name.isEmpty() ? "\"" + name + "\"" : name;
    }
}
