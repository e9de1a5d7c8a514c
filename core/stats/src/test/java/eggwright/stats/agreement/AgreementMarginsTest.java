package eggwright.stats.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.junit.jupiter.api.Test;

class AgreementMarginsTest {
    /** Every table of 6 eggs in three words is made; for each pair of totals the bounds are the ends that occur. */
    @Test
    void bounds_areTheEndsOfAllTablesWithTheseTotals() {
        var least = new HashMap<AgreementMargins, Long>();
        var most = new HashMap<AgreementMargins, Long>();
        for (var cells : allWaysToLay(6, 9)) {
            var table = Tables.of(
                    new long[] {cells[0], cells[1], cells[2]},
                    new long[] {cells[3], cells[4], cells[5]},
                    new long[] {cells[6], cells[7], cells[8]});
            least.merge(table.margins(), table.agreed(), Math::min);
            most.merge(table.margins(), table.agreed(), Math::max);
        }
        assertEquals(784, least.size(), "28 ways to lay 6 eggs in three words, for each look");
        least.forEach((margins, agreed) -> assertEquals(agreed, margins.leastAgreed(), margins.toString()));
        most.forEach((margins, agreed) -> assertEquals(agreed, margins.mostAgreed(), margins.toString()));
    }

    private static List<int[]> allWaysToLay(int eggs, int cells) {
        var ways = new ArrayList<int[]>();
        lay(new int[cells], 0, eggs, ways);
        return ways;
    }

    private static void lay(int[] cells, int at, int left, List<int[]> ways) {
        if (at == cells.length - 1) {
            cells[at] = left;
            ways.add(cells.clone());
            return;
        }
        for (int here = 0; here <= left; here++) {
            cells[at] = here;
            lay(cells, at + 1, left - here, ways);
        }
    }

    @Test
    void bounds_holdATray_ofWhichOnlyTotalsAreKnown() {
        // 54 eggs: one look saw 6 clears and 1 rot, the other 4 and 1.
        var margins = new AgreementMargins(List.of("live", "clear", "rot"), List.of(47L, 6L, 1L), List.of(49L, 4L, 1L));
        assertEquals(42, margins.leastAgreed());
        assertEquals(52, margins.mostAgreed());
        assertTrue(margins.leastKappa() < 0 && margins.mostKappa() > 0.8);
    }

    @Test
    void margins_areRefused_whenTheLooksHadDifferentEggs() {
        var names = List.of("live", "clear");
        assertThrows(OutOfRange.class, () -> new AgreementMargins(names, List.of(50L, 4L), List.of(50L, 3L)));
        assertThrows(OutOfRange.class, () -> new AgreementMargins(names, List.of(0L, 0L), List.of(0L, 0L)));
        assertThrows(OutOfRange.class, () -> new AgreementMargins(names, List.of(55L, -1L), List.of(50L, 4L)));
        assertThrows(OutOfRange.class, () -> new AgreementMargins(names, List.of(54L), List.of(50L, 4L)));
    }
}
