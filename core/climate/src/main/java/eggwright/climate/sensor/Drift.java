package eggwright.climate.sensor;

import java.time.Instant;

/**
 * Two instruments that should agree, and do not.
 *
 * @param before by how much they differed at first, in standard units; the first less the second
 * @param now by how much they differ
 * @param tolerance by how much they might
 * @param from since when they are compared
 * @param compared how many days, or readings by hand, that rests on
 */
public record Drift(Kind kind, double before, double now, double tolerance, Instant from, int compared) {
    /** In which way they disagree. */
    public enum Kind {
        /** They differ otherwise than at first: one of them drifts, or was moved. */
        SHIFTED,
        /** They differ all the while by more than two such instruments in the same air. */
        APART
    }
}
