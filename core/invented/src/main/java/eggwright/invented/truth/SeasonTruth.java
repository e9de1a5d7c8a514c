package eggwright.invented.truth;

import java.time.DayOfWeek;
import java.time.LocalTime;

/**
 * The frame of the season.
 *
 * @param sets weekly sets, 1 to 40
 * @param firstSetDay days from the first egg until the first set may go in, 1 to 60
 * @param setWeekday on which sets go in
 * @param setHour local hour at which sets go in
 * @param workHour local hour of the evening's work: weighing, candling, transfer
 */
public record SeasonTruth(int sets, int firstSetDay, DayOfWeek setWeekday, LocalTime setHour, LocalTime workHour) {
    public static final SeasonTruth PLAIN =
            new SeasonTruth(14, 10, DayOfWeek.MONDAY, LocalTime.of(8, 0), LocalTime.of(19, 0));

    public SeasonTruth {
        Within.range("sets", sets, 1, 40);
        Within.range("first_set_day", firstSetDay, 1, 60);
    }
}
