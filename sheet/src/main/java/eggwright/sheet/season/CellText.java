package eggwright.sheet.season;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** What a cell's text says, read as a date or a count. */
sealed interface CellText<T> {
    int MOST_EGGS = 1_000_000;
    int FIRST_YEAR = 1900;
    int LAST_YEAR = 2099;

    Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
    Pattern WHOLE = Pattern.compile("[0-9]+");
    Pattern BELOW = Pattern.compile("[-\u2212]\\s*[0-9]+([.,][0-9]+)?");
    Pattern BROKEN = Pattern.compile("[0-9]+[.,][0-9]+([.,][0-9]+)*");

    record Value<T>(T value) implements CellText<T> {}

    record Wrong<T>(String typed, String what, String right) implements CellText<T> {}

    static CellText<LocalDate> date(String text) {
        var parts = DATE.matcher(text);
        if (!parts.matches()) {
            return new Wrong<>(
                    text, "is not written as year-month-day", "Write the fifth of April 2027 as 2027-04-05.");
        }
        int year = Integer.parseInt(parts.group(1));
        try {
            var date = LocalDate.of(year, Integer.parseInt(parts.group(2)), Integer.parseInt(parts.group(3)));
            return year >= FIRST_YEAR && year <= LAST_YEAR
                    ? new Value<>(date)
                    : new Wrong<>(
                            text,
                            "is outside the years that Eggwright keeps",
                            "Years run from " + FIRST_YEAR + " to " + LAST_YEAR + ".");
        } catch (DateTimeException impossible) {
            return new Wrong<>(text, "is not in the calendar", "Write a date that exists, such as 2027-04-05.");
        }
    }

    static CellText<Integer> count(String text) {
        if (WHOLE.matcher(text).matches()) {
            int value = 0;
            for (int i = 0; i < text.length() && value <= MOST_EGGS; i++) {
                value = 10 * value + (text.charAt(i) - '0');
            }
            return value <= MOST_EGGS
                    ? new Value<>(value)
                    : new Wrong<>(text, "is more than a row may hold", "Write a whole number from 0 to 1000000.");
        }
        if (BELOW.matcher(text).matches()) {
            return new Wrong<>(text, "is below zero", "Write a whole number from 0 to 1000000.");
        }
        if (BROKEN.matcher(text).matches()) {
            return new Wrong<>(
                    text,
                    "is not a whole number",
                    "Eggs are counted whole: write digits only, without a point or a comma.");
        }
        return new Wrong<>(text, "is not a number", "Write a whole number from 0 to 1000000, or leave the cell empty.");
    }
}
