package eggwright.sheet.logger;

import java.util.OptionalDouble;

/** What stands before the decimals of a file. */
enum DecimalMark {
    POINT,
    COMMA;

    /** Reads a number; empty where the text is none. A unit right behind it, as in {@code 99.5 °F}, is passed over. */
    OptionalDouble read(String text) {
        int end = text.length();
        while (end > 0 && !isDigit(text.charAt(end - 1))) {
            end--;
        }
        if (end == 0 || text.length() - end > 4) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            boolean isMark = this == POINT ? c == '.' : c == ',';
            if (!isDigit(c) && !isMark && !((c == '-' || c == '+') && i == 0)) {
                return OptionalDouble.empty();
            }
        }
        var number = text.substring(0, end);
        try {
            return OptionalDouble.of(Double.parseDouble(this == POINT ? number : number.replace(',', '.')));
        } catch (NumberFormatException none) {
            return OptionalDouble.empty();
        }
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
