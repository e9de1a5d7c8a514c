package eggwright.climate.development;

import java.time.Duration;
import java.time.Instant;

/** When something will be: likely then, and hardly before or after. */
public record When(Instant early, Instant likely, Instant late) {
    public When {
        if (early.isAfter(likely) || likely.isAfter(late)) {
            throw new eggwright.units.OutOfRange(early + ", " + likely + " and " + late + " are out of order");
        }
    }

    When plus(Duration early, Duration likely, Duration late) {
        return new When(this.early.plus(early), this.likely.plus(likely), this.late.plus(late));
    }
}
