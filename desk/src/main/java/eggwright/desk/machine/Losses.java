package eggwright.desk.machine;

import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Aim;
import eggwright.climate.weight.Estimate;
import eggwright.climate.weight.SetLoss;
import eggwright.desk.words.Words;

/** Words a loss of weight: always with its range, and whom it rests on. */
final class Losses {
    private final Words words;

    Losses(Words words) {
        this.words = words;
    }

    /** As {@code 10.9 % (10.2 to 11.6)}. A loss is never below nothing. */
    String say(Estimate loss) {
        return words.say("loss", number(loss.pct()), number(loss.low()), number(loss.high()));
    }

    /** What it rests on. */
    String restsOn(SetLoss loss) {
        return switch (loss.shells().from()) {
            case WEIGHED -> words.say("loss.weighed", loss.measured().size(), loss.eggsWeighed());
            case EARLIER_SETS -> words.say("loss.earlierSets");
            case PUBLISHED -> words.say("loss.published");
        };
    }

    /** The band and whose it is. */
    String band(Aim aim) {
        var range = range(aim);
        return aim.bestSets() > 0
                ? words.say("band.own", range, aim.bestSets())
                : words.say("band.trade", range, aim.source().words());
    }

    String range(Aim aim) {
        return words.say("band", number(aim.band().lowPct()), number(aim.band().highPct()));
    }

    /** What a page calls a set of one species. */
    String name(SetInside set) {
        return words.say("set.name", set.set().text(), words.species(set.species()), set.day());
    }

    String number(double pct) {
        return String.format(words.language(), "%.1f", Math.max(0, pct));
    }
}
