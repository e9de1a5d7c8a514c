package eggwright.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.trade.source.Source;
import org.junit.jupiter.api.Test;

class MachineTablesTest {
    @Test
    void everySpecies_hasALossToReach_withItsSource() {
        for (var species : Species.values()) {
            var target = LossTarget.of(species);
            assertTrue(target.value().lowPct() < target.value().highPct(), species.word());
            assertFalse(target.source().words().isEmpty());
        }
    }

    /** Meir, Nir and Ar 1984: 12 % give or take 1 in 28 days; in a straight line 10.7 % by the transfer on day 25. */
    @Test
    void band_isTakenOnAnotherDay_alongAStraightLine() {
        var turkey = LossTarget.of(Species.TURKEY).value();
        assertEquals(12, turkey.middlePct());
        assertEquals(10.7, turkey.onDay(25).middlePct(), 0.02);
    }

    @Test
    void whatIsFromMemory_saysSo() {
        assertEquals(new Source.FromMemory(), LossTarget.of(Species.PHEASANT).source());
        assertTrue(LossTarget.of(Species.RED_LEGGED_PARTRIDGE).source() instanceof Source.Published);
    }

    @Test
    void worseHeatAndColder_neverCostLess() {
        for (double age : new double[] {0.1, 0.5, 0.9}) {
            assertTrue(highest(age, 43, 3) <= highest(age, 45, 3));
            assertTrue(highest(age, 41, 1) <= highest(age, 43, 1));
            assertTrue(highest(age, 28, 10) <= highest(age, 20, 10));
            assertTrue(highest(age, 20, 3) <= highest(age, 20, 10));
        }
    }

    @Test
    void workingHeat_isNoHarm() {
        assertEquals(0, highest(0.5, 37.5, 24));
        assertEquals(0, highest(0.5, 38.3, 24));
    }

    /** Ande and Wilson 1981: 43.3 °C halved the hatch of hens within 4 to 12 hours. */
    @Test
    void halfOfTheHatch_isWithinTheRange_whereItWasSeen() {
        for (double hours : new double[] {4, 5, 7, 12}) {
            assertTrue(highest(0.5, 43.3, hours) >= 50, hours + " h");
            assertTrue(lowest(0.5, 43.3, hours) <= 50, hours + " h");
        }
    }

    private static double highest(double age, double celsius, double hours) {
        return HarmRule.all().stream()
                .filter(r -> r.isOfAge(age) && r.isOfTemperature(celsius) && r.isOfLength(hours))
                .mapToDouble(HarmRule::highPct)
                .max()
                .orElse(0);
    }

    private static double lowest(double age, double celsius, double hours) {
        return HarmRule.all().stream()
                .filter(r -> r.isOfAge(age) && r.isOfTemperature(celsius) && r.isOfLength(hours))
                .mapToDouble(HarmRule::lowPct)
                .min()
                .orElse(0);
    }
}
