package eggwright.desk.machine;

import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.MachineAdvice;
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

    String of(SetInside set, SetAdvice advice) {
        var said = new ArrayList<String>();
        said.add(words.say(
                "why.lost",
                set.set().text(),
                set.species().word(),
                set.day(),
                losses.say(advice.loss().now()),
                losses.restsOn(advice.loss())));
        if (Losses.isWeighed(advice.loss())) {
            said.add(words.say(
                    "why.lands",
                    losses.say(advice.projected()),
                    days.day(advice.until().atZone(zone)),
                    losses.band(advice.aim())));
            said.add(asks(advice));
        } else {
            // A guess is not held against a band: that would set a table against a habit.
            said.add(words.say("why.weigh"));
        }
        for (var oddity : advice.loss().oddities()) {
            said.add(oddity(oddity));
        }
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

    /** What each set gets of the one humidity. */
    TableShown table(MachineAdvice together, Function<SetAdvice, SetInside> inside) {
        var rows = new ArrayList<List<Cell>>();
        var finals = together.compromise().orElseThrow().lossesPct();
        for (int i = 0; i < together.sets().size(); i++) {
            var advice = together.sets().get(i);
            var set = inside.apply(advice);
            rows.add(List.of(
                    Cell.of(set.set().text()),
                    Cell.of(set.day()),
                    Cell.of(losses.range(advice.aim())),
                    Cell.of(losses.number(advice.projected().pct()) + "\u00a0%"),
                    Cell.of(losses.number(finals.get(i)) + "\u00a0%"),
                    Cell.of(off(finals.get(i), advice))));
        }
        return new TableShown(
                List.of(
                        words.say("head.set"),
                        words.say("head.day"),
                        words.say("head.band"),
                        words.say("head.asItIs"),
                        words.say("head.together"),
                        words.say("head.costs")),
                rows);
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
