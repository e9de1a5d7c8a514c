package eggwright.trade.caution;

import java.util.Locale;

/** Where, in the work, somebody can come to harm. */
public enum Place {
    ROTTEN_EGGS,
    BREAK_OUT,
    DUST,
    DISINFECTANT,
    CURRENT_AND_WATER,
    HUMANE_KILLING,
    REPORTABLE_SIGNS,
    HEAT_LAMPS,
    CANDLING_LAMP,
    FUEL_INDOORS,
    ZOONOSES,
    DISPOSAL,
    PERMITS;

    /** The word of the table, as {@code rotten_eggs}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
