package eggwright.desk.note;

import eggwright.desk.part.CautionShown;
import eggwright.desk.words.Words;
import eggwright.trade.caution.Caution;

/** A caution of the trade with its title. */
final class CautionsWorded {
    private CautionsWorded() {}

    static CautionShown of(Caution caution, Words words) {
        return new CautionShown(
                words.say("caution." + caution.place().word()),
                caution.text(),
                words.say("caution.ask", caution.deferTo()));
    }
}
