package eggwright.climate.excursion;

import eggwright.climate.rollup.Band;
import eggwright.climate.rollup.Rollup;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds excursions in rolled-up readings. Short ones, as of an open door, are let go; near ones are one. */
public final class Excursions {
    /** A door that is open for a candling: ours. */
    static final Duration SHORTEST = Duration.ofMinutes(20);

    /** Back in the band for less than that is no end: ours. */
    public static final Duration SHORTEST_PAUSE = Duration.ofMinutes(30);

    private Excursions() {}

    /** @param rollups of air temperature, in time order, some minutes each */
    public static List<Excursion> of(List<Rollup> rollups, Band band) {
        var found = new ArrayList<Excursion>();
        @Nullable Excursion open = null;
        for (var rollup : rollups) {
            var which = kind(rollup, band);
            if (which.isEmpty()) {
                continue;
            }
            var kind = which.get();
            double extreme = kind == Excursion.Kind.COLD ? rollup.min() : rollup.max();
            if (open != null
                    && open.kind() == kind
                    && !rollup.from().isAfter(open.to().plus(SHORTEST_PAUSE))) {
                open = new Excursion(kind, open.from(), rollup.to(), further(kind, open.extremeCelsius(), extreme));
            } else {
                close(open, found);
                open = new Excursion(kind, rollup.from(), rollup.to(), extreme);
            }
        }
        close(open, found);
        return found;
    }

    /** Which way a stretch lies outside a band; empty where it does not. */
    public static Optional<Excursion.Kind> kind(Rollup rollup, Band band) {
        if (rollup.mean() < band.low()) {
            return Optional.of(Excursion.Kind.COLD);
        }
        return rollup.mean() > band.high() ? Optional.of(Excursion.Kind.HOT) : Optional.empty();
    }

    private static double further(Excursion.Kind kind, double one, double other) {
        return kind == Excursion.Kind.COLD ? Math.min(one, other) : Math.max(one, other);
    }

    private static void close(@Nullable Excursion open, List<Excursion> found) {
        if (open != null && open.length().compareTo(SHORTEST) >= 0) {
            found.add(open);
        }
    }
}
