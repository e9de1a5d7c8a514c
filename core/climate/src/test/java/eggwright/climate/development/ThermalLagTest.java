package eggwright.climate.development;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class ThermalLagTest {
    private static final Instant NIGHT = Instant.parse("2027-04-10T04:00:00Z");
    private static final Warmth WARM = new Warmth(NIGHT.minusSeconds(3600), NIGHT, 37.5);

    private static Warmth last(List<Warmth> all) {
        return all.getLast();
    }

    @Test
    void eggs_followTheAir_by63PercentInOneTime() {
        var hour = Duration.ofHours(3);
        var felt = new ThermalLag(hour)
                .felt(List.of(
                        WARM,
                        new Warmth(NIGHT, NIGHT.plus(hour), 17.5),
                        new Warmth(NIGHT.plus(hour), NIGHT.plus(hour).plusMillis(1), 17.5)));
        assertEquals(17.5 + 20 * Math.exp(-1), last(felt).celsius(), 0.01);
    }

    /** Reyna and Burggren 2012: a bobwhite egg reaches the air's temperature in 38 minutes; three times of 13 leave 5 %. */
    @Test
    void oneSmallEgg_isThereIn38Minutes() {
        var lag = new ThermalLag(Duration.ofMinutes(13));
        var felt = lag.felt(List.of(
                WARM,
                new Warmth(NIGHT, NIGHT.plus(Duration.ofMinutes(38)), 17.5),
                new Warmth(NIGHT.plus(Duration.ofMinutes(38)), NIGHT.plus(Duration.ofMinutes(39)), 17.5)));
        assertTrue(last(felt).celsius() < 17.5 + 0.06 * 20, last(felt).toString());
    }

    @Test
    void eggs_keepTheirWarmth_betweenWarmAirAndCold() {
        var felt = ThermalLag.FULL_MACHINE.felt(List.of(
                WARM,
                new Warmth(NIGHT, NIGHT.plusSeconds(7200), 15),
                new Warmth(NIGHT.plusSeconds(7200), NIGHT.plusSeconds(36_000), 37.5)));
        assertTrue(felt.stream().allMatch(w -> w.celsius() <= 37.5 + 1e-9 && w.celsius() > 15));
        for (int i = 1; i < felt.size(); i++) {
            assertEquals(felt.get(i - 1).to(), felt.get(i).from());
        }
    }
}
