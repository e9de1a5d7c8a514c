package eggwright.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.Fate;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.testkit.walls.Walls;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RateReportTest {
    private static final LocalDate FIRST_EGG = LocalDate.of(2027, 3, 22);

    /** Whatever the dimension: every egg in one group, and the metrics part the eggs. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void groups_addUpToTheTotal_byAnything(Dimension by) {
        var picture = Ledger.of(Season.of(Truth.PLAIN, 11, FIRST_EGG).entries()).picture();
        var report = RateReport.of(picture, by);
        var total = report.total();
        assertEquals(
                total.eggsSet(),
                report.groups().stream().mapToInt(GroupRates::eggsSet).sum());
        for (var fate : Fate.values()) {
            assertEquals(
                    total.eggs(fate),
                    report.groups().stream().mapToInt(g -> g.eggs(fate)).sum(),
                    fate.word());
        }
        assertEquals(
                total.fertility().of(),
                report.groups().stream().mapToLong(g -> g.fertility().of()).sum());
        assertEquals(
                total.hatchOfSet().count(),
                report.groups().stream().mapToLong(g -> g.hatchOfSet().count()).sum());
        int with =
                report.groups().stream().mapToInt(GroupRates::countedWithOthers).sum();
        int from = report.groups().stream().mapToInt(GroupRates::fromOthers).sum();
        assertEquals(from, with, "what is counted with others is somewhere");
        for (var group : report.groups()) {
            int fates =
                    group.fates().values().stream().mapToInt(Integer::intValue).sum();
            assertEquals(group.eggsSet() + group.fromOthers(), fates + group.countedWithOthers(), group.key());
        }
    }

    @Test
    void fertile_isEggsLessInfertileLessUnopenedClears() {
        var picture = Ledger.of(Season.of(Truth.PLAIN, 11, FIRST_EGG).entries()).picture();
        var total = RateReport.of(picture, Dimension.PEN).total();
        assertEquals(
                total.fertility().of() - total.eggs(Fate.INFERTILE) - total.eggs(Fate.CLEAR_UNOPENED),
                total.fertility().count());
    }

    @Test
    void rates_keepsToItsWalls() {
        Walls.ofRoom("eggwright.rates").holdInTheCore();
    }
}
