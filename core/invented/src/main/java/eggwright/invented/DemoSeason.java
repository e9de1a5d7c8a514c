package eggwright.invented;

import eggwright.invented.season.InventedSeason;
import eggwright.invented.season.Season;
import eggwright.invented.truth.FarmTruth;
import eggwright.invented.truth.NotebookTruth;
import eggwright.invented.truth.PenEventTruth;
import eggwright.invented.truth.SeasonTruth;
import eggwright.invented.truth.SectionTruth;
import eggwright.invented.truth.Truth;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * The season that is shown to somebody who looks at Eggwright for the first time: mid-season today, with work waiting.
 *
 * <p>Yesterday the seventh set went in. One is to be candled today, one has been, one is in the hatcher, the first three
 * are off. Whatever the hour, the book ends at noon today at the latest: the evening's work is left to the visitor.
 */
public final class DemoSeason {
    /** A season that looks like most. */
    public static final long SEED = 11;

    private static final int SETS_SO_FAR = 7;
    /** The loggers were hung in with the first set. */
    private static final int DAYS_READ = 7 * SETS_SO_FAR - 5;

    private static final LocalTime LAST_NOTED = LocalTime.NOON;

    private DemoSeason() {}

    /**
     * The season as the desk knows it.
     *
     * @param zone where the farm lies
     */
    public static InventedSeason of(Instant now, ZoneId zone) {
        return of(now, zone, SEED);
    }

    public static InventedSeason of(Instant now, ZoneId zone, long seed) {
        var today = now.atZone(zone).toLocalDate();
        var lastSet = today.minusDays(1);
        var plain = SeasonTruth.PLAIN;
        var frame = new SeasonTruth(14, plain.firstSetDay(), lastSet.getDayOfWeek(), plain.setHour(), plain.workHour());
        var from = lastSet.minusWeeks(SETS_SO_FAR - 1).minusDays(frame.firstSetDay());
        var noon = today.atTime(LAST_NOTED).atZone(zone).toInstant();
        return Season.of(truth(frame, zone), seed, from).until(now.isBefore(noon) ? now : noon);
    }

    /** What the loggers in its machines wrote until now. */
    public static void readings(Instant now, InventedAir.Logger logger) {
        for (var machine : Truth.PLAIN.machines()) {
            InventedAir.write(machine, SEED, now.minus(DAYS_READ, ChronoUnit.DAYS), now, logger);
        }
    }

    /** What the thermometers of its egg room wrote until now, of which one drifts. */
    public static void eggRoom(Instant now, InventedAir.Probe probe) {
        InventedAir.writeEggRoom(SEED, now.minus(DAYS_READ, ChronoUnit.DAYS), now, probe);
    }

    /** The plain farm, with something to find: a cock that fails in one pen, and a section that is too dry. */
    private static Truth truth(SeasonTruth frame, ZoneId zone) {
        var plain = Truth.PLAIN;
        var farm = plain.farm();
        var notes = NotebookTruth.PLAIN;
        return plain.with(frame)
                .with(new FarmTruth(farm.name(), zone, farm.keepers()))
                .with(new NotebookTruth(
                        1.5, 1, 0, 0, notes.roundMissedPct(), notes.weighedTrays(), notes.remarksPerWeek()))
                .withEvents(List.of(new PenEventTruth("Willow", PenEventTruth.What.COCK_FAILS, 18, -1.4, 10)))
                .withSections(plain.sections().stream()
                        .map(s -> s.name().equals("4") ? new SectionTruth(s.machine(), "4", 0.3, 0.9, 1.3) : s)
                        .toList());
    }
}
