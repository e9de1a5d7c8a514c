package eggwright.desk.joining;

import java.time.Duration;

/**
 * How often a secret may be tried: so many in a span for one address, and so many for all together.
 *
 * <p>What was used up comes back evenly over the span. So within any one span at most twice the number can be tried: all
 * that had been saved up, and all that comes back.
 *
 * @param ofOne address may try in the span
 * @param ofAll addresses together may try in the span
 */
record Limits(int ofOne, int ofAll, Duration span) {
    /**
     * For a code. It lives as long as the span, {@link Devices#CODE_LIVES}, so at most 40 tries fall into its life, and
     * at most {@link Devices#MOST_CODES} codes can be hit by each. A code is one of 31^8 = 852,891,037,441: the chance
     * that guessing hits any is at most 40 × 10 / 31^8, under one in two thousand million.
     */
    static final Limits CODE = new Limits(5, 20, Devices.CODE_LIVES);

    /** For the passphrase: at most 20 an hour over the long run, 175,000 a year. */
    static final Limits PASSPHRASE = new Limits(5, 20, Duration.ofHours(1));

    /** Tries that can fall into one span. */
    int mostInOneSpan() {
        return 2 * ofAll;
    }
}
