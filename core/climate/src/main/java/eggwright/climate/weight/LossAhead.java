package eggwright.climate.weight;

import java.time.Instant;

/**
 * What eggs will have lost by a point ahead, if the air stays as it is.
 *
 * @param loss since the set
 */
public record LossAhead(Point point, Instant at, Estimate loss) {
    /** What is ahead. */
    public enum Point {
        TRANSFER,
        /** The first pip. Pipping itself takes more, beyond what goes through shells. */
        PIP
    }
}
