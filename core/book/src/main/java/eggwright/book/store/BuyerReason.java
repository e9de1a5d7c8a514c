package eggwright.book.store;

import eggwright.units.Reason;
import java.util.Locale;

/** Why what is said of a buyer is refused. In brackets the values that are named. */
public enum BuyerReason implements Reason {
    BUYER_WITHOUT_NAME,
    /** (its characters, the most). */
    BUYER_TEXT_TOO_LONG;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
