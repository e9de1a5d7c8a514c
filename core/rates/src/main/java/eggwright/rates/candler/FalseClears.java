package eggwright.rates.candler;

import eggwright.stats.interval.Intervals;
import eggwright.units.Rate;
import java.util.Optional;

/**
 * Eggs that a person called clear and took out, and what they were when opened. Definitions: {@code
 * docs/definitions.md}, People at the lamp. {@link Intervals#wilson95} puts its interval round each rate.
 *
 * @param called eggs called clear and taken out
 * @param falseClear of those opened and named, eggs that had grown to the day of the look, and so may have lived; the
 *     false-clear rate
 * @param developed of those opened and named, eggs in which anything had begun: those too, and deaths too early to see,
 *     which a good eye calls clear as well
 */
public record FalseClears(int called, Rate falseClear, Rate developed) {
    /** Clears of which nobody can say what they were: not opened, opened together with other eggs, or spoilt. */
    public int untold() {
        return Math.toIntExact(called - falseClear.of());
    }

    /**
     * The chicks that went with them.
     *
     * @param hatchOfFertile saleable of fertile of the rest of the season
     * @return empty where no clear was opened or no hatch is known
     */
    public Optional<ChicksLost> chicks(Rate hatchOfFertile) {
        if (falseClear.isEmpty() || hatchOfFertile.isEmpty()) {
            return Optional.empty();
        }
        var share = Intervals.wilson95(falseClear);
        double each = hatchOfFertile.share();
        return Optional.of(new ChicksLost(
                falseClear.count() * each,
                untold() * share.estimate() * each,
                untold() * share.low() * each,
                untold() * share.high() * each));
    }
}
