package eggwright.desk.farm;

import eggwright.book.picture.SetPicture;
import eggwright.desk.Answer;
import eggwright.desk.Visit;
import eggwright.desk.rate.RatesWorded;
import eggwright.desk.words.Words;
import eggwright.units.Rate;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** How these pages word what they share. */
final class Shown {
    private Shown() {}

    static Words words(Visit visit) {
        return Words.beside(Shown.class, visit.language());
    }

    static Answer page(LedgerPage page) {
        return Answer.page("farm/page.jte", page);
    }

    static String path(SetPicture set) {
        return "/sets/" + encoded(set.name().text());
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** Day of incubation. */
    static long day(SetPicture set, LocalDate today) {
        return ChronoUnit.DAYS.between(set.setOn(), today);
    }

    /** Counts, share and 95 % interval, or that there is nothing to count yet. */
    static String rate(Rate rate, Locale language) {
        return RatesWorded.say(rate, language);
    }
}
