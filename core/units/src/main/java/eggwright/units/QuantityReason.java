package eggwright.units;

import java.util.Locale;

/** Why a quantity is refused. In brackets the values that are named. */
public enum QuantityReason implements Reason {
    /** Not inside a closed range (the value, its lower and upper limit, the unit). */
    OUTSIDE,
    /** (the text). */
    NOT_A_MASS,
    /** (the text). */
    MASS_WITHOUT_UNIT,
    /** (the text). */
    MASS_OF_OTHER_UNIT,
    /** (the text). */
    NOT_A_TEMPERATURE,
    /** (the text). */
    TEMPERATURE_WITHOUT_UNIT,
    /** (the text). */
    TEMPERATURE_OF_OTHER_UNIT,
    /** (the text). */
    NOT_A_PRESSURE,
    /** (the text). */
    PRESSURE_WITHOUT_UNIT,
    /** (the text). */
    PRESSURE_OF_OTHER_UNIT,
    /** (the text). */
    NOT_AN_ALTITUDE,
    /** (the text). */
    ALTITUDE_WITHOUT_UNIT,
    /** (the text). */
    ALTITUDE_OF_OTHER_UNIT,
    /** (the text). */
    NOT_A_LENGTH,
    /** (the text). */
    LENGTH_WITHOUT_UNIT,
    /** (the text). */
    LENGTH_OF_OTHER_UNIT,
    /** (the text). */
    NOT_A_HUMIDITY,
    /** (the text). */
    NOT_AN_AMOUNT,
    /** (the text). */
    AMOUNT_WITHOUT_UNIT,
    /** (the text). */
    AMOUNT_OF_OTHER_UNIT;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
