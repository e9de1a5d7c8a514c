package eggwright.today.task;

import eggwright.trade.source.Source;
import java.util.Locale;

/** Customs of the trade that stand in no profile of a species. */
public enum Practice {
    /** Dry and wet bulb, water, turner, vents, twice a day. */
    DAILY_ROUNDS,
    /** 6 to 12 hours in moving dry air, so that no moisture forms on the shell. From memory. */
    EGGS_WARM_BEFORE_SET,
    HATCHER_READY_A_DAY_BEFORE,
    BROODER_WARM_A_DAY_BEFORE,
    BOXES_READY_A_DAY_BEFORE,
    CLEAN_AFTER_TAKE_OFF,
    /** What did not hatch tells why. */
    OPEN_WHAT_IS_LEFT,
    OPEN_WHAT_WAS_KEPT,
    DISPOSE_AFTER_THE_LOOK;

    /** For message keys. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Source source() {
        return switch (this) {
            case EGGS_WARM_BEFORE_SET -> new Source.FromMemory();
            case DAILY_ROUNDS,
                    HATCHER_READY_A_DAY_BEFORE,
                    BROODER_WARM_A_DAY_BEFORE,
                    BOXES_READY_A_DAY_BEFORE,
                    CLEAN_AFTER_TAKE_OFF,
                    OPEN_WHAT_IS_LEFT,
                    OPEN_WHAT_WAS_KEPT,
                    DISPOSE_AFTER_THE_LOOK -> new Source.CommonPractice();
        };
    }
}
