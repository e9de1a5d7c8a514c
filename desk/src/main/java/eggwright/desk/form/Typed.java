package eggwright.desk.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What was typed into a form, as it was typed.
 *
 * @param values by the name of the field
 */
public record Typed(Map<String, List<String>> values) {
    /** The most rows that one note takes. Nobody fills in more by hand. */
    public static final int MOST_ROWS = 500;

    /** The most rows that are shown again where there were too many: more than the longest form can hold. */
    private static final int MOST_SHOWN = 5000;

    private static final Pattern ROW = Pattern.compile("(\\d{1,4})\\..+");
    private static final Pattern TOO_FAR = Pattern.compile("0*([5-9]\\d\\d|[1-9]\\d{3,})\\..+");

    public Typed {
        values = values.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, e -> List.copyOf(e.getValue())));
    }

    /** Nothing typed yet. */
    public static Typed nothing() {
        return new Typed(Map.of());
    }

    /** For tests and links: one value a field. */
    public static Typed of(Map<String, String> one) {
        return new Typed(one.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> List.of(e.getValue()), (a, b) -> b)));
    }

    /** A field that was in the form, even if it was left empty. */
    public Optional<String> one(String name) {
        return Optional.ofNullable(values.get(name))
                .flatMap(list -> list.stream().findFirst());
    }

    /** The text of a field without blanks around it; empty where nothing was typed. */
    public String text(String name) {
        return one(name).map(String::strip).orElse("");
    }

    /** Every value of a field that may be chosen more than once. */
    public List<String> all(String name) {
        return values.getOrDefault(name, List.of());
    }

    /** How many rows of a repeated field were in the form: one more than the highest number. */
    public int rowCount(String rows) {
        Function<String, Integer> number = name -> {
            var match = ROW.matcher(name.substring(rows.length() + 1));
            return match.matches() ? Math.min(Integer.parseInt(match.group(1)) + 1, MOST_SHOWN) : 0;
        };
        return values.keySet().stream()
                .filter(name -> name.startsWith(rows + "."))
                .map(number)
                .max(Integer::compare)
                .orElse(0);
    }

    /** Whether a repeated field holds anything in a row beyond the {@value #MOST_ROWS} that one note takes. */
    public boolean holdsTooManyRows(String rows) {
        return values.entrySet().stream()
                .filter(e -> e.getKey().startsWith(rows + "."))
                .filter(e ->
                        TOO_FAR.matcher(e.getKey().substring(rows.length() + 1)).matches())
                .anyMatch(e -> e.getValue().stream().anyMatch(v -> !v.isBlank()));
    }

    /** The rows of a repeated field that hold anything, each with its number and its own fields. */
    public List<Row> filledRows(String rows) {
        return IntStream.range(0, rowCount(rows))
                .mapToObj(i -> new Row(i, rowName(rows, i)))
                .filter(row -> values.entrySet().stream()
                        .filter(e -> e.getKey().startsWith(row.name() + "."))
                        .anyMatch(e -> e.getValue().stream().anyMatch(v -> !v.isBlank())))
                .toList();
    }

    static String rowName(String rows, int number) {
        return rows + "." + number;
    }

    /**
     * A row of a repeated field.
     *
     * @param number from 0
     * @param name of the row; its fields are {@code name.field}
     */
    public record Row(int number, String name) {
        /** The full name of a field in this row. */
        public String field(String field) {
            return name + "." + field;
        }
    }
}
