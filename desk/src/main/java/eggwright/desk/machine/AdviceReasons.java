package eggwright.desk.machine;

import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.Oddity;
import eggwright.climate.weight.SetAdvice;
import eggwright.desk.part.TableShown;
import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** The reasons of an advice, set by set: what was weighed, where it will land, whose band that is, how sure it is. */
final class AdviceReasons {
    /** Of the normal distribution, for 95 in a hundred. */
    private static final double DEVIATIONS = 1.96;

    private final ZoneId zone;
    private final Words words;
    private final Losses losses;
    private final Days days;

    AdviceReasons(ZoneId zone, Words words) {
        this.zone = zone;
        this.words = words;
        this.losses = new Losses(words);
        this.days = Days.in(words.language());
    }

    /** Of a set that was weighed. A guess is not held against a band: that would set a table against a habit. */
    String of(SetInside set, SetAdvice advice) {
        var said = new ArrayList<String>();
        said.add(words.say(
                "why.lost",
                set.set().text(),
                words.species(set.species()),
                set.day(),
                losses.say(advice.loss().now()),
                losses.restsOn(advice.loss())));
        said.add(words.say(
                "why.lands",
                losses.say(advice.projected()),
                days.day(advice.until().atZone(zone)),
                losses.band(advice.aim())));
        said.add(asks(advice));
        for (var oddity : advice.loss().oddities()) {
            said.add(oddity(oddity));
        }
        return String.join(" ", said);
    }

    /** Of those that were not weighed, together; what was left aside of them is told too. */
    String ofUnweighed(List<SetInside> sets) {
        var said = new ArrayList<String>();
        said.add(words.say(
                "why.unweighed",
                String.join("; ", sets.stream().map(losses::name).toList())));
        sets.forEach(set -> set.loss().oddities().forEach(odd -> said.add(oddity(odd))));
        return String.join(" ", said);
    }

    private String asks(SetAdvice advice) {
        double needed = advice.neededPct();
        if (needed > Advising.LIMITS.high().pct()) {
            return words.say(
                    "why.asksWetter", AdviceWords.points(Advising.LIMITS.high().pct()));
        }
        if (needed < Advising.LIMITS.low().pct()) {
            return words.say(
                    "why.asksDrier", AdviceWords.points(Advising.LIMITS.low().pct()));
        }
        double unsure = DEVIATIONS * advice.neededErrorPct();
        return words.say(
                "why.asks",
                AdviceWords.points(needed),
                AdviceWords.points(Math.max(0, needed - unsure)),
                AdviceWords.points(Math.min(100, needed + unsure)));
    }

    private String oddity(Oddity oddity) {
        return words.say(
                "odd." + oddity.what().name().toLowerCase(Locale.ROOT),
                oddity.tray().text(),
                days.stamp(oddity.at().atZone(zone)));
    }

    /**
     * What each set gets of the one humidity.
     *
     * @param turnedPct what they will have lost where the dial is turned; empty where it is left
     */
    TableShown table(List<SetAdvice> sets, List<Double> turnedPct, Function<SetAdvice, SetInside> inside) {
        var rows = new ArrayList<List<Cell>>();
        for (int i = 0; i < sets.size(); i++) {
            var advice = sets.get(i);
            var set = inside.apply(advice);
            double asItIs = advice.projected().pct();
            var row = new ArrayList<>(List.of(
                    Cell.of(words.say("set.kind", set.set().text(), words.species(set.species()))),
                    Cell.of(set.day()),
                    Cell.of(losses.range(advice.aim())),
                    Cell.of(losses.number(asItIs) + "\u00a0%")));
            if (turnedPct.isEmpty()) {
                row.add(Cell.of(off(asItIs, advice)));
            } else {
                row.add(Cell.of(losses.number(turnedPct.get(i)) + "\u00a0%"));
                row.add(Cell.of(off(turnedPct.get(i), advice)));
            }
            rows.add(row);
        }
        var heads = new ArrayList<>(List.of(
                words.say("head.set"), words.say("head.day"), words.say("head.band"), words.say("head.asItIs")));
        if (!turnedPct.isEmpty()) {
            heads.add(words.say("head.together"));
        }
        heads.add(words.say("head.costs"));
        return new TableShown(heads, rows);
    }

    private String off(double loss, SetAdvice advice) {
        var band = advice.aim().band();
        if (loss < band.lowPct()) {
            return words.say("costs.short", losses.number(band.lowPct() - loss));
        }
        if (loss > band.highPct()) {
            return words.say("costs.beyond", losses.number(loss - band.highPct()));
        }
        return words.say("costs.inBand");
    }
}
