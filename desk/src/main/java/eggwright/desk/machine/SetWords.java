package eggwright.desk.machine;

import eggwright.climate.air.KnownBy;
import eggwright.climate.development.HatchClock;
import eggwright.climate.development.HatchExpected;
import eggwright.climate.development.When;
import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.SetAdvice;
import eggwright.climate.weight.StorageLoss;
import eggwright.desk.machine.OneMachinePage.Figure;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** Words the sets in a machine: how far, what they lost, when they hatch, and why that is not what the calendar says. */
final class SetWords {
    private static final double FRESH_DAYS = 1;
    private static final long HALF_HOUR = 30;

    private final ZoneId zone;
    private final Words words;
    private final Losses losses;
    private final LossPicture pictures;
    private final Days days;

    SetWords(Instant at, ZoneId zone, Words words) {
        this.pictures = new LossPicture(at, words);
        this.zone = zone;
        this.words = words;
        this.losses = new Losses(words);
        this.days = Days.in(words.language());
    }

    OneMachinePage.SetInside of(SetInside set, List<SetAdvice> advice) {
        var hatch = set.hatch();
        var figures = new ArrayList<Figure>();
        figures.add(Figure.of(words.say("set.eggs"), Integer.toString(set.eggs())));
        figures.add(new Figure(words.say("set.lost"), losses.say(set.loss().now()), losses.restsOn(set.loss())));
        if (set.storage().days() > 0) {
            figures.add(storage(set.storage()));
        }
        figures.add(when("set.firstPip", hatch.firstPip()));
        figures.add(when("set.middle", hatch.middle()));
        figures.add(when("set.end", hatch.to()));
        figures.add(new Figure(words.say("set.calendar"), stamp(set.calendarMiddle()), later(hatch)));
        figures.add(new Figure(words.say("set.why"), "", why(set)));
        return new OneMachinePage.SetInside(
                new OneMachinePage.Link(
                        "/sets/" + MachinePaths.encoded(set.set().text()),
                        words.say("set.open", set.set().text())),
                losses.name(set),
                words.say(
                        "set.brief",
                        stamp(hatch.middle().early()),
                        stamp(hatch.middle().late())),
                figures,
                pictures.of(set, advice));
    }

    private Figure when(String key, When when) {
        return new Figure(
                words.say(key),
                stamp(when.likely()),
                words.say("set.between", stamp(when.early()), stamp(when.late())));
    }

    /** To the hour: it is not known better. */
    private String stamp(Instant at) {
        ZonedDateTime hour = at.atZone(zone).plusMinutes(HALF_HOUR).truncatedTo(ChronoUnit.HOURS);
        return days.stamp(hour);
    }

    private String later(HatchExpected hatch) {
        var hours = hatch.hoursLater();
        long likely = Math.round(hours.likely());
        var range = range(Math.round(hours.low()), Math.round(hours.high()));
        if (likely == 0) {
            return words.say("later.same", range);
        }
        return words.say(likely > 0 ? "later.later" : "later.earlier", Math.abs(likely), range);
    }

    /** Which way is said of each end where a range reaches to both sides. */
    private String range(long low, long high) {
        return low < 0 && high > 0
                ? words.say("later.bothWays", -low, high)
                : words.say(
                        "later.oneWay",
                        Math.min(Math.abs(low), Math.abs(high)),
                        Math.max(Math.abs(low), Math.abs(high)));
    }

    /** What the egg room took before; never weighed, and in no band. */
    private Figure storage(StorageLoss storage) {
        return new Figure(
                words.say("set.storage"),
                losses.say(storage.loss()),
                words.say(
                        storage.air() == KnownBy.READINGS ? "storage.read" : "storage.notRead",
                        losses.number(storage.days())));
    }

    /** What is left of the whole when storage and what was learnt are taken off: the warmth of its hours. */
    private static long warmthHours(SetInside set) {
        return Math.round(set.hatch().hoursLater().likely()
                - HatchClock.hoursForStorage(set.storedDays()).likely()
                - set.learnt().hours());
    }

    private String why(SetInside set) {
        var why = new ArrayList<String>();
        if (set.storedDays() > FRESH_DAYS) {
            why.add(words.say(
                    "why.stored",
                    losses.number(set.storedDays()),
                    Math.round(HatchClock.hoursForStorage(set.storedDays()).likely())));
        }
        if (set.airKnownHours() == 0) {
            why.add(words.say("why.warmthNotRead"));
        } else if (set.airKnownHours() < set.airHours()) {
            why.add(words.say("why.warmthReadPartly", set.airKnownHours(), set.airHours()));
        } else {
            why.add(words.say("why.warmthRead", set.airHours()));
        }
        long warmth = warmthHours(set);
        if (warmth != 0) {
            why.add(words.say(warmth > 0 ? "why.cool" : "why.warm", Math.abs(warmth)));
        }
        var learnt = set.learnt();
        long hours = Math.round(learnt.hours());
        if (learnt.sets() > 0 && hours != 0) {
            why.add(words.say(hours > 0 ? "why.learntLater" : "why.learntEarlier", Math.abs(hours), learnt.sets()));
        }
        return String.join(" ", List.copyOf(why));
    }
}
