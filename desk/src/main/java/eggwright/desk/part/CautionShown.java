package eggwright.desk.part;

import eggwright.desk.words.Words;
import eggwright.trade.caution.Caution;
import java.util.Locale;

/**
 * A caution beside the work it belongs to: short, never a dose, with whom to ask.
 *
 * @param title as "Rotten eggs can burst"
 * @param text one or two sentences
 * @param ask the authority that decides, as "Your vet, and your country's rules on carcasses"
 */
public record CautionShown(String title, String text, String ask) {
    /** A caution of the trade, with its title. */
    public static CautionShown of(Caution caution, Locale language) {
        var words = Words.beside(CautionShown.class, language);
        return new CautionShown(
                words.say("caution." + caution.place().word()),
                caution.text(),
                words.say("caution.ask", caution.deferTo()));
    }
}
