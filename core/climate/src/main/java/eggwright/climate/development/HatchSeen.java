package eggwright.climate.development;

import eggwright.units.OutOfRange;
import java.time.Instant;
import java.util.List;

/**
 * One set that was taken off, beside what the clock had said of it.
 *
 * @param machine the hatcher, by name; empty where not recorded
 * @param expectedMiddle when the clock alone, with nothing learnt, put the middle of the hatch
 * @param windowHours from the first chick to the last, as the species' handbook has it
 * @param pulls in time order; the last is the last of the set
 */
public record HatchSeen(String machine, Instant expectedMiddle, double windowHours, List<PullSeen> pulls) {
    public HatchSeen {
        pulls = List.copyOf(pulls);
        OutOfRange.check("Hatch window", windowHours, 1, 240, "hours");
        if (pulls.isEmpty()) {
            throw new OutOfRange("A set without a pull says nothing of its hatch");
        }
    }

    /** So many chicks came out at a pull. */
    public record PullSeen(Instant at, int chicks) {
        public PullSeen {
            OutOfRange.check("Chicks of a pull", chicks, 0, 10_000_000, "chicks");
        }
    }

    int chicks() {
        return pulls.stream().mapToInt(PullSeen::chicks).sum();
    }
}
