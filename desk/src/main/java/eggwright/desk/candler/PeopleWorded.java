package eggwright.desk.candler;

import eggwright.desk.candler.CandlersPage.Fact;
import eggwright.desk.candler.CandlersPage.Person;
import eggwright.desk.live.LiveBook;
import eggwright.desk.part.RateShown;
import eggwright.desk.words.Words;
import eggwright.rates.candler.Candler;
import eggwright.rates.candler.CandlerReport;
import eggwright.rates.candler.ChicksLost;
import eggwright.rates.candler.FalseClears;
import eggwright.rates.candler.MissedClears;
import eggwright.rates.candler.NotTold;
import eggwright.stats.interval.Intervals;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Words and rounds the report. */
final class PeopleWorded {
    private final CandlerReport report;
    private final Words words;

    PeopleWorded(CandlerReport report, Locale language) {
        this.report = report;
        this.words = Words.beside(PeopleWorded.class, language);
    }

    CandlersPage page() {
        return new CandlersPage(report.people().stream().map(this::person).toList(), List.of());
    }

    private Person person(Candler candler) {
        var name = candler.who().equals(LiveBook.nobodyNamed())
                ? words.say("nobody")
                : candler.who().text();
        return new Person(
                name,
                words.say("looks", candler.looks()),
                clears(candler.falseClears()),
                misses(candler.missedClears()));
    }

    private List<Fact> clears(FalseClears clears) {
        var facts = new ArrayList<Fact>();
        facts.add(text("called", words.say("eggs", clears.called())));
        if (clears.called() == 0) {
            return facts;
        }
        var opened = clears.falseClear().of();
        facts.add(text("opened", words.say(opened == 0 ? "opened.none" : "opened.some", opened, clears.untold())));
        if (opened > 0) {
            facts.add(rate("false", clears.falseClear(), ""));
            facts.add(rate("developed", clears.developed(), words.say("developed.text")));
            facts.add(text(
                    "cost",
                    clears.chicks(report.hatchOfFertile())
                            .map(chicks -> chicks(chicks, clears))
                            .orElse(words.say("chicks.unknown"))));
        }
        return facts;
    }

    private String chicks(ChicksLost chicks, FalseClears clears) {
        var known = clears.falseClear().count() == 0
                ? words.say("chicks.none")
                : words.say("chicks.known", tenths(chicks.known()));
        return clears.untold() == 0
                ? known
                : known
                        + " "
                        + words.say(
                                "chicks.unopened",
                                clears.untold(),
                                tenths(chicks.unopened()),
                                tenths(chicks.unopenedLow()),
                                tenths(chicks.unopenedHigh()));
    }

    private List<Fact> misses(MissedClears misses) {
        var facts = new ArrayList<Fact>();
        if (misses.looks() > 0) {
            facts.add(
                    misses.missed().isEmpty()
                            ? text("missed", words.say("missed.none"))
                            : rate(
                                    "missed",
                                    misses.missed(),
                                    words.say("basis." + misses.basis().word())));
            if (misses.undecided() > 0) {
                facts.add(text("undecided", words.say("undecided.text", misses.undecided())));
            }
            if (misses.missed().count() > 0) {
                facts.add(text("cost", words.say("room", misses.eggDays(), misses.hatcherPlaces())));
            }
        }
        if (!misses.leftOut().isEmpty()) {
            facts.add(text(
                    "leftOut",
                    Arrays.stream(NotTold.values())
                            .filter(misses.leftOut()::containsKey)
                            .map(why -> words.say(
                                    "leftOut." + why.name().toLowerCase(Locale.ROOT),
                                    misses.leftOut().getOrDefault(why, 0)))
                            .collect(Collectors.joining(" "))));
        }
        return facts;
    }

    private Fact text(String key, String text) {
        return new Fact(words.say("fact." + key), List.of(), text);
    }

    private Fact rate(String key, Rate rate, String text) {
        var interval = Intervals.wilson95(rate);
        return new Fact(
                words.say("fact." + key),
                List.of(RateShown.of(
                        rate.count(), rate.of(), 100 * interval.low(), 100 * interval.high(), words.language())),
                text);
    }

    private String tenths(double chicks) {
        return String.format(words.language(), "%.1f", chicks);
    }
}
