package eggwright.trade;

import eggwright.units.Reason;
import java.util.Locale;

/** Why a value of a species profile is refused. */
public enum ValueReason implements Reason {
    /** Not of its field's kind, or outside what can be: the text, and the {@link ProfileField.Kind}. */
    NOT_OF_ITS_KIND;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
