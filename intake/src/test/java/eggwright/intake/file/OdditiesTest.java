package eggwright.intake.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.rollup.Gaps;
import eggwright.climate.sensor.Sifting;
import eggwright.intake.MemoryReadings;
import eggwright.intake.Shelf2;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OdditiesTest {
    private static final Instant FIRST = Instant.parse("2026-10-01T00:00:00Z");
    private static final int MINUTES = 200_000;

    /** Five months a month at a time: what is found is what is found when all of it is looked at together. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void stretches_tellTheSame_asAllTogether(long seed) {
        var random = new SplittableRandom(seed);
        var readings = new MemoryReadings();
        try (var load = readings.load()) {
            for (int minute = 0; minute < MINUTES; minute++) {
                boolean silent = minute % 40_000 > 39_000 || random.nextInt(2_000) == 0;
                double value = random.nextInt(5_000) == 0 ? 185 : 99.5 + random.nextDouble() / 2;
                if (!silent) {
                    load.add(Shelf2.CHANNEL, FIRST.plusSeconds(60L * minute).toEpochMilli(), value);
                }
            }
            load.keep();
        }
        var extent = readings.extent(Shelf2.CHANNEL).orElseThrow();
        var all = readings.between(Shelf2.CHANNEL, Instant.EPOCH, FIRST.plus(Duration.ofDays(400)));

        var oddities = Oddities.of(readings, List.of(Shelf2.CHANNEL), extent.first(), extent.last());

        var held = Sifting.of(Shelf2.CHANNEL, all, List.of()).held();
        assertTrue(held.size() > TakenFile.MOST_HELD_SHOWN, "there is something to find: " + held.size());
        assertEquals(held.size(), oddities.held());
        assertEquals(
                held.subList(0, TakenFile.MOST_HELD_SHOWN),
                oddities.firstHeld().stream().map(TakenFile.HeldBack::what).toList());
        assertEquals(Gaps.of(all).size(), oddities.gaps());
    }
}
