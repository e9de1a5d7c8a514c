package eggwright.today.task;

import java.util.Locale;

/** A habit that the farm noted. */
public enum Habit {
    SET_WEEKDAY,
    CANDLING_DAYS;

    /** For message keys. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
