package eggwright.climate.care;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.climate.sensor.Doubt;
import eggwright.climate.sensor.Held;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeldStretchTest {
    private static final Instant NOON = Instant.parse("2027-04-05T12:00:00Z");

    private static Held held(int minute, double value, Doubt why) {
        return new Held(NOON.plus(Duration.ofMinutes(minute)), value, why);
    }

    private static HeldStretch stretch(Doubt why, int from, int to, int count, double least, double most) {
        return new HeldStretch(
                why, NOON.plus(Duration.ofMinutes(from)), NOON.plus(Duration.ofMinutes(to)), count, least, most);
    }

    /** A loose plug all afternoon, and one jump in the midst of it that is long over. */
    @Test
    void stretch_goesOn_thoughAnotherDoubtBeganAndEndedMeanwhile() {
        assertEquals(
                List.of(stretch(Doubt.IMPOSSIBLE, 0, 170, 4, 180, 185), stretch(Doubt.JUMP, 30, 30, 1, 60, 60)),
                HeldStretch.of(List.of(
                        held(0, 185, Doubt.IMPOSSIBLE),
                        held(30, 60, Doubt.JUMP),
                        held(55, 183, Doubt.IMPOSSIBLE),
                        held(110, 181, Doubt.IMPOSSIBLE),
                        held(170, 180, Doubt.IMPOSSIBLE))));
    }

    @Test
    void stretch_ends_afterAnHourWithoutAnother() {
        assertEquals(
                List.of(stretch(Doubt.JUMP, 0, 60, 2, 60, 61), stretch(Doubt.JUMP, 121, 121, 1, 62, 62)),
                HeldStretch.of(List.of(held(0, 60, Doubt.JUMP), held(60, 61, Doubt.JUMP), held(121, 62, Doubt.JUMP))));
    }
}
