package eggwright.book.name;

import eggwright.units.Reason;
import java.util.Locale;

/** Why a name is refused. In brackets the values that are named. */
public enum NameReason implements Reason {
    NAME_EMPTY,
    /** (its characters, the most). */
    NAME_TOO_LONG,
    /** A line break or another control character. */
    NAME_ON_TWO_LINES,
    /** (the text). */
    NOT_AN_ENTRY_ID;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
