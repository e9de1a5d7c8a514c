package eggwright.desk.rate;

import eggwright.desk.picture.IntervalPlot.Standing;
import eggwright.desk.words.Words;
import eggwright.rates.Contrast;
import eggwright.rates.Verdict;
import java.util.Locale;
import java.util.Optional;

/** Whether a difference is real, in words that a person uses, with the number beside them. */
public final class VerdictWords {
    private static final double RARE = 0.001;
    /** Rarer than this is said as one in so many, the rest as so many in a hundred. */
    private static final double SELDOM = 0.095;

    private final Words words;

    public VerdictWords(Locale language) {
        this.words = Words.beside(VerdictWords.class, language);
    }

    /** As "below the rest, hardly luck (1 in 400)"; a group that was not compared has none. */
    public String say(Optional<Contrast> contrast) {
        return switch (contrast.orElse(null)) {
            case null -> words.say("verdict.together");
            case Contrast.TooFew few -> words.say(few.rest().isEmpty() ? "verdict.alone" : "verdict." + few.verdict());
            case Contrast.Compared it -> {
                var said = words.say("verdict." + it.verdict(), chance(it.adjustedChance()));
                yield switch (standing(contrast)) {
                    case BELOW -> words.say("verdict.below", said);
                    case ABOVE -> words.say("verdict.above", said);
                    case USUAL, TOO_FEW -> said;
                };
            }
        };
    }

    /** How often luck alone does it: "1 in 400", "31 in 100". */
    String chance(double chance) {
        if (chance < RARE) {
            return words.say("chance.rare", Math.round(1 / RARE));
        }
        return chance < SELDOM
                ? words.say("chance.oneIn", rounded(1 / chance))
                : words.say("chance.inHundred", Math.round(100 * chance));
    }

    /** To two figures: nobody knows a chance better. */
    private static long rounded(double many) {
        return many < 100 ? Math.round(many) : 10 * Math.round(many / 10);
    }

    static Standing standing(Optional<Contrast> contrast) {
        return switch (contrast.orElse(null)) {
            case null -> Standing.TOO_FEW;
            case Contrast.TooFew few -> Standing.TOO_FEW;
            case Contrast.Compared it ->
                it.verdict() != Verdict.HARDLY_LUCK
                        ? Standing.USUAL
                        : it.difference() < 0 ? Standing.BELOW : Standing.ABOVE;
        };
    }
}
