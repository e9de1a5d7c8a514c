package eggwright.desk.part;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A ruled table, worded and rounded. The first cell of a row is its head. Columns of whole numbers line up at the right;
 * a table too wide for a phone is stacked there, each row a block of its own.
 *
 * @param rows each as wide as the heads
 * @param sums the last line, of all together, as wide as the heads; empty where there is none
 */
public record TableShown(List<String> heads, List<List<Cell>> rows, List<Cell> sums) {
    private static final Pattern NUMBER = Pattern.compile("[\\d.,\\u00a0\\u202f\u2212-]*\\d\u00a0?%?");
    /** Signs that stand side by side on the narrowest screen, about. */
    private static final int NARROW = 46;

    private static final int BETWEEN = 2;
    private static final int MANY = 9;
    /** Of a row on a phone. */
    private static final int MOST_LINES = 6;
    /** A sentence rather than a figure: where it is the only one of its row, it needs no head on a phone. */
    private static final int SENTENCE = 34;

    /**
     * @param path empty where it leads nowhere
     */
    public record Cell(String text, String path) {
        public static Cell of(Object text) {
            return new Cell(String.valueOf(text), "");
        }
    }

    public TableShown {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
        sums = List.copyOf(sums);
        for (var row : rows) {
            mustFit(heads, row);
        }
        if (!sums.isEmpty()) {
            mustFit(heads, sums);
        }
    }

    /** A table without a line of sums. */
    public TableShown(List<String> heads, List<List<Cell>> rows) {
        this(heads, rows, List.of());
    }

    private static void mustFit(List<String> heads, List<Cell> row) {
        if (row.size() != heads.size()) {
            throw new IllegalArgumentException("A row of " + row.size() + " under " + heads.size() + " heads");
        }
    }

    /** How a column is set. */
    public enum Shape {
        TEXT,
        NUMBER,
        SENTENCE;

        /** The class in the style sheet; empty for plain text. */
        public String style() {
            return switch (this) {
                case TEXT -> "";
                case NUMBER -> "n";
                case SENTENCE -> "sentence";
            };
        }
    }

    public Shape shape(int column) {
        if (isNumber(column)) {
            return Shape.NUMBER;
        }
        return isSentence(column)
                        && IntStream.range(0, heads.size())
                                        .filter(this::isSentence)
                                        .count()
                                == 1
                ? Shape.SENTENCE
                : Shape.TEXT;
    }

    private boolean isSentence(int column) {
        return column > 0 && widthOf(column) > SENTENCE;
    }

    /** Whether a column holds numbers and nothing else. */
    private boolean isNumber(int column) {
        return column > 0
                && rows.stream()
                        .map(r -> r.get(column).text())
                        .allMatch(text -> text.isEmpty() || NUMBER.matcher(text).matches());
    }

    /**
     * Classes in the style sheet: stacked on a phone where it is too wide for one, and flowing there where a line for each
     * cell would be too long; close where it has many columns.
     */
    public String style() {
        return (isWide() ? "stack" : "")
                + (isWide() && heads.size() > MOST_LINES ? " flow" : "")
                + (heads.size() > MANY ? " dense" : "");
    }

    private boolean isWide() {
        return heads.size() > 2
                && IntStream.range(0, heads.size()).map(this::widthOf).sum() > NARROW;
    }

    private int widthOf(int column) {
        int cells =
                rows.stream().mapToInt(r -> r.get(column).text().length()).max().orElse(0);
        int longestWord = Pattern.compile(" ")
                .splitAsStream(heads.get(column))
                .mapToInt(String::length)
                .max()
                .orElse(0);
        return BETWEEN + Math.max(cells, longestWord);
    }
}
