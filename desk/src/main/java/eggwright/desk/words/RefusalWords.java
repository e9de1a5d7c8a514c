package eggwright.desk.words;

import eggwright.trade.ProfileField;
import eggwright.units.OutOfRange;
import eggwright.units.Reason;
import java.time.LocalDate;
import java.util.Locale;

/** Why a value is refused, in the language of a page. */
public final class RefusalWords {
    private final Words words;

    public RefusalWords(Locale language) {
        this.words = Words.beside(RefusalWords.class, language);
    }

    public String say(OutOfRange refused) {
        var arguments = refused.values().stream().map(this::argument).toArray();
        return words.say(refused.reason().map(RefusalWords::key).orElse("refused.other"), arguments);
    }

    static String key(Reason reason) {
        return "refused." + reason.word();
    }

    private Object argument(Object value) {
        return switch (value) {
            case ProfileField.Kind kind -> words.say("form." + kind.name().toLowerCase(Locale.ROOT));
            case LocalDate day -> day.toString();
            default -> value;
        };
    }
}
