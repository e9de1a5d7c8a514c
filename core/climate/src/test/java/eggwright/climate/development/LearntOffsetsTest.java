package eggwright.climate.development;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.development.HatchSeen.PullSeen;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LearntOffsetsTest {
    private static final Instant MIDDLE = Instant.parse("2027-04-29T13:00:00Z");
    private static final double WINDOW_HOURS = 24;

    /** A set of 100 chicks, pulled 12 hours before, at and 24 hours after the middle that the clock said. */
    private static HatchSeen set(String machine, double hoursLater, SplittableRandom random) {
        int first = 0;
        int second = 0;
        for (int chick = 0; chick < 100; chick++) {
            double hatched = hoursLater + WINDOW_HOURS / 4 * normal(random);
            if (hatched + LearntOffsets.DRY_HOURS < 0) {
                first++;
            } else if (hatched + LearntOffsets.DRY_HOURS < 24) {
                second++;
            }
        }
        return new HatchSeen(
                machine,
                MIDDLE,
                WINDOW_HOURS,
                List.of(
                        new PullSeen(MIDDLE, first),
                        new PullSeen(MIDDLE.plusSeconds(24 * 3600), second),
                        new PullSeen(MIDDLE.plusSeconds(60 * 3600), 100 - first - second)));
    }

    private static double normal(SplittableRandom random) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }

    private static Learnt of(Map<String, Learnt> learnt, String machine) {
        return Optional.ofNullable(learnt.get(machine)).orElseThrow();
    }

    @Test
    void nothingSeen_isTheHandbook_giveOrTakeHalfADay() {
        var learnt = LearntOffsets.ofAnother(List.of());
        assertEquals(0, learnt.hours(), 1e-9);
        assertEquals(Learnt.NOTHING.deviationHours(), learnt.deviationHours(), 0.5);
    }

    @Test
    void lateMachine_isFound_afterManySets_andOneSetIsDrawnTowardsTheFarm() {
        var random = new SplittableRandom(11);
        var many = new ArrayList<HatchSeen>();
        for (int i = 0; i < 8; i++) {
            many.add(set("Hatcher", 10, random));
        }
        var learnt = of(LearntOffsets.of(many), "Hatcher");
        assertEquals(10, learnt.hours(), 3);
        assertTrue(learnt.deviationHours() < 5, learnt.toString());
        var one = of(LearntOffsets.of(List.of(set("Hatcher", 20, random))), "Hatcher");
        assertTrue(one.deviationHours() > learnt.deviationHours());
        assertTrue(one.hours() > 5 && one.hours() < 18, one.toString());
    }

    @Test
    void machines_areToldApart_andANewOneGoesByTheFarm() {
        var random = new SplittableRandom(12);
        var seen = new ArrayList<HatchSeen>();
        for (int i = 0; i < 6; i++) {
            seen.add(set("A", -6, random));
            seen.add(set("B", 6, random));
        }
        var learnt = LearntOffsets.of(seen);
        assertTrue(of(learnt, "A").hours() < -3, learnt::toString);
        assertTrue(of(learnt, "B").hours() > 3, learnt::toString);
        assertEquals(0, LearntOffsets.ofAnother(seen).hours(), 3);
    }

    @Test
    void setEmptiedInOnePull_saysOnlyThatItWasOver() {
        var late = new HatchSeen(
                "Hatcher", MIDDLE, WINDOW_HOURS, List.of(new PullSeen(MIDDLE.plusSeconds(72 * 3600), 80)));
        assertEquals(0, of(LearntOffsets.of(List.of(late)), "Hatcher").hours(), 1);
    }
}
