package eggwright.book.entry;

import eggwright.units.Reason;
import java.util.Locale;

/** Why what an entry says is refused. In brackets the values that are named. */
public enum EntryReason implements Reason {
    /** (the count, the least). */
    TOO_FEW,
    /** (the count, the most). */
    NOT_A_COUNT,
    /** (the day, the first year, the last). */
    YEAR_OUTSIDE,
    /** (the first day, the last). */
    DAYS_BACKWARDS,
    /** (its characters, the most). */
    TEXT_TOO_LONG,
    /** (the text). */
    NOT_A_TIME_ZONE,
    /** (the day, the least, the most). */
    CANDLING_DAY_OUTSIDE,
    /** (the eggs, the least, the most). */
    TRAY_ROW_OUTSIDE,
    /** (the minutes, the least, the most). */
    MINUTES_OUT_OUTSIDE,
    TRANSFER_WITHOUT_TRAY,
    /** (the tray). */
    TRAY_WITHOUT_EGGS,
    COUNT_OF_NOTHING,
    /** (the tray). */
    TRAY_WITHOUT_SET,
    MEND_OF_A_MEND,
    /** (the eggs in classes, the eggs opened). */
    MORE_CLASSED_THAN_OPENED,
    /** (the clears, the eggs opened). */
    MORE_CLEARS_THAN_OPENED,
    /** (the set). */
    SET_WITHOUT_TRAYS,
    /** (the set). */
    SECOND_LOOK_WITHOUT_TRAY,
    /** (the tray, its set). */
    MOVED_INTO_ITSELF,
    SENSOR_WITHOUT_MACHINE,
    /** (the machine). */
    MACHINE_OF_OTHER_PLACE,
    /** (the amount). */
    AMOUNT_OF_OTHER_QUANTITY,
    COMPARED_WITH_NOTHING,
    /** (the correction, the most; both with their unit). */
    CORRECTION_TOO_LARGE,
    /** (the first moment, the last). */
    MOMENTS_BACKWARDS;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
