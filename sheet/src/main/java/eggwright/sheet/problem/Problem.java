package eggwright.sheet.problem;

import org.jspecify.annotations.Nullable;

/**
 * One thing in a file that cannot be taken as it stands.
 *
 * @param file the file's name, without its folder
 * @param row the row as a spreadsheet numbers it, the header being row 1; absent where the whole file is meant
 * @param column the name in the header; absent where a whole row is meant
 * @param value what stands there; absent where nothing in particular does
 * @param what what is the matter, as the rest of a sentence that begins with the value: "is not a whole number"
 * @param right what would be right, as a sentence
 */
public record Problem(
        String file,
        @Nullable Integer row,
        @Nullable String column,
        @Nullable String value,
        String what,
        String right) {
    /** As much of a cell as a message shows. */
    private static final int LONGEST_SHOWN = 60;

    public Problem {
        value = value == null ? null : shortened(value);
    }

    public static Problem ofFile(String file, String what, String right) {
        return new Problem(file, null, null, null, what, right);
    }

    /** For example: {@code season.csv, row 14, column "eggs": "12.5" is not a whole number. Write 12 or 13.} */
    public String words() {
        var words = new StringBuilder(file);
        if (row != null) {
            words.append(", row ").append(row);
        }
        if (column != null) {
            words.append(", column \"").append(column).append('"');
        }
        words.append(row == null && column == null ? " " : ": ");
        if (value != null) {
            words.append('"').append(value).append("\" ");
        }
        words.append(what).append('.');
        return right.isEmpty()
                ? words.toString()
                : words.append(' ').append(right).toString();
    }

    private static String shortened(String value) {
        var plain = new StringBuilder();
        value.codePoints()
                .limit(LONGEST_SHOWN + 1L)
                .map(c -> Character.isISOControl(c) ? ' ' : c)
                .forEach(plain::appendCodePoint);
        return plain.codePointCount(0, plain.length()) > LONGEST_SHOWN
                ? plain.substring(0, plain.offsetByCodePoints(0, LONGEST_SHOWN)) + "…"
                : plain.toString();
    }
}
