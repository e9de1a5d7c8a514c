package eggwright.desk.today;

import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.today.DaySheet;
import eggwright.today.task.LeftOpen;
import eggwright.today.task.NotLooked;
import eggwright.today.task.Target;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;

/** What the book was never told: looks that were not taken, and hatches whose end was not noted. */
public final class GapLines {
    private final Words words;

    public GapLines(Locale language) {
        this.words = Words.beside(GapLines.class, language);
    }

    /** Each gap in a sentence, with the place where it can still be closed. */
    public List<TodayPage.Link> of(DaySheet sheet) {
        var gaps = new ArrayList<TodayPage.Link>();
        for (LeftOpen open : sheet.leftOpen()) {
            gaps.add(new TodayPage.Link(
                    Paths.of(Target.Form.of("taken-off", open.set())),
                    words.say("gap.leftOpen", open.set().text(), day(open.takeOff()))));
        }
        record Look(eggwright.book.name.SetName set, int day) {}
        var looks = new LinkedHashMap<Look, Integer>();
        for (NotLooked missed : sheet.notLooked()) {
            looks.merge(new Look(missed.set(), missed.day()), missed.trays().size(), Integer::sum);
        }
        looks.forEach((look, trays) -> gaps.add(new TodayPage.Link(
                Paths.of(Target.Form.of("looked", look.set())),
                words.say("gap.notLooked", look.set().text(), look.day(), trays))));
        return gaps;
    }

    private String day(LocalDate day) {
        return Days.in(words.language()).longDay(day);
    }
}
