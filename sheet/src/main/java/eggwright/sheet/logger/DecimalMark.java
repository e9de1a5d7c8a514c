package eggwright.sheet.logger;

import java.util.OptionalDouble;

/** What stands before the decimals of a file. */
enum DecimalMark {
    POINT,
    COMMA;

    /** A longer word behind a number is no unit. */
    private static final int MOST_UNIT = 4;

    /** More digits than that are not a whole number as a double; those go the long way. */
    private static final int MOST_DIGITS = 15;

    private static final double[] TENS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    /** Reads a number; empty where the text is none. A unit right behind it, as in {@code 99.5 °F}, is passed over. */
    OptionalDouble read(String text) {
        double number = number(text);
        return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
    }

    /**
     * The same; NaN where the text is none. A season has millions, so that plain ones are put together here: digits as a whole
     * number, divided by a power of ten, both exact as doubles, give the nearest double, as the long way does.
     */
    double number(String text) {
        int end = text.length();
        while (end > 0 && isOfUnit(text.charAt(end - 1))) {
            end--;
        }
        if (end == 0 || text.length() - end > MOST_UNIT || !isDigit(text.charAt(end - 1))) {
            return Double.NaN;
        }
        boolean isSigned = text.charAt(0) == '-' || text.charAt(0) == '+';
        char mark = this == POINT ? '.' : ',';
        long whole = 0;
        int digits = 0;
        int decimals = -1;
        for (int i = isSigned ? 1 : 0; i < end; i++) {
            char c = text.charAt(i);
            if (isDigit(c)) {
                // Past the last exact digit it may wrap round; the long way is taken then.
                whole = whole * 10 + (c - '0');
                digits++;
                decimals += decimals >= 0 ? 1 : 0;
            } else if (c == mark && decimals < 0) {
                decimals = 0;
            } else {
                return Double.NaN;
            }
        }
        if (digits > MOST_DIGITS) {
            return Double.parseDouble(text.substring(0, end).replace(mark, '.'));
        }
        double number = whole / TENS[Math.max(0, decimals)];
        return text.charAt(0) == '-' ? -number : number;
    }

    private static boolean isOfUnit(char c) {
        return !isDigit(c) && (Character.isLetter(c) || c == ' ' || c == '°' || c == '%' || c == '℃' || c == '℉');
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
