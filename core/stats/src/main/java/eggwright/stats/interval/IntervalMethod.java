package eggwright.stats.interval;

import eggwright.units.OutOfRange;
import java.util.Arrays;
import java.util.stream.Collectors;

/** The ways to put an interval round a proportion, with the word that is typed for each. */
public enum IntervalMethod {
    /** The ends solve the score test. Source: Wilson 1927, J. Am. Stat. Assoc. 22:209. */
    WILSON("wilson"),
    /** Equal-tailed Beta(x + 1/2, n - x + 1/2). Source: Brown, Cai and DasGupta 2001, Stat. Sci. 16:101. */
    JEFFREYS("jeffreys"),
    /** The ends solve the exact binomial tails. Source: Clopper and Pearson 1934, Biometrika 26:404. */
    CLOPPER_PEARSON("clopper-pearson"),
    /** Normal interval about Wilson's middle. Source: Agresti and Coull 1998, Am. Stat. 52:119. */
    AGRESTI_COULL("agresti-coull");

    private final String word;

    IntervalMethod(String word) {
        this.word = word;
    }

    /** The word as it is typed on the command line and answered in JSON. */
    public String word() {
        return word;
    }

    /**
     * The method of a typed word.
     *
     * @throws OutOfRange if no method has this word; the message lists those there are
     */
    public static IntervalMethod parse(String word) {
        for (var method : values()) {
            if (method.word.equals(word)) {
                return method;
            }
        }
        throw new OutOfRange("There is no interval method \"" + word + "\". There are "
                + Arrays.stream(values()).map(IntervalMethod::word).collect(Collectors.joining(", ")));
    }
}
