package eggwright.sheet.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.sheet.table.TableRead;
import eggwright.sheet.table.TableReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Published hatches, imported as real seasons. Sources: README.md beside the files. */
class PublishedSeasonsTest {
    private final Seasons farm = new Seasons();

    private void keep(String file) throws IOException {
        try (var in = Objects.requireNonNull(PublishedSeasonsTest.class.getResourceAsStream(file), file)) {
            keep(TableReader.read(in.readAllBytes(), file));
        }
    }

    private void keep(TableRead read) {
        farm.keep(assertInstanceOf(TableRead.Read.class, read, read.toString()).table());
        assertEquals(List.of(), farm.ledger().picture().discrepancies());
    }

    /** As printed: so many decimals, in per cent. */
    private static String percent(int decimals, int part, int of) {
        return String.format(Locale.ROOT, "%." + decimals + "f", 100.0 * part / of);
    }

    /** Eggs set - infertile - clears that were not opened: UC ANR 8127. */
    private static int fertile(EggAccount account) {
        return account.eggsSet() - account.eggs(Fate.INFERTILE) - account.eggs(Fate.CLEAR_UNOPENED);
    }

    @Test
    void pheasantsOfAWinterHatch_giveThePrintedPercentages() throws IOException {
        keep("pheasant_winter_hatch.csv");
        var account = farm.account("Winter");
        assertEquals("50", percent(0, fertile(account), account.eggsSet()));
        assertEquals("30", percent(0, account.eggs(Fate.SALEABLE), account.eggsSet()));
        assertEquals(
                Map.of(Fate.INFERTILE, 5, Fate.MID_DEAD, 1, Fate.LATE_DEAD, 1, Fate.SALEABLE, 3), farm.fates("Winter"));
    }

    @Test
    void partridgesOfTwoTrials_giveThePrintedPercentages() throws IOException {
        keep("partridge_two_trials.csv");
        var turning = farm.account("Turning in storage");
        assertEquals("70.5", percent(1, fertile(turning), turning.eggsSet()));
        assertEquals("81.6", percent(1, turning.eggs(Fate.SALEABLE), fertile(turning)));
        var hatching = farm.account("Hatch phase");
        assertEquals("74.7", percent(1, fertile(hatching), hatching.eggsSet()));
        assertEquals("85.7", percent(1, hatching.eggs(Fate.SALEABLE), fertile(hatching)));
    }

    @Test
    void bobwhitesOfASeason_giveThePrintedPercentage_andTheOthersStayUnaccounted() throws IOException {
        keep("bobwhite_captive.csv");
        var account = farm.account("Season");
        assertEquals("61.6", percent(1, account.eggs(Fate.SALEABLE), account.eggsSet()));
        assertEquals(2222, account.eggs(Fate.UNACCOUNTED));
    }

    @Test
    void quailEggsStoredCold_giveThePrintedPercentages_byDaysOfStorage() throws IOException {
        keep("quail_cold_storage.csv");
        var account = farm.account("Cold");
        var printed = Map.of("0 days", "84.5", "3 days", "79.5", "5 days", "74.0", "7 days", "69.0");
        for (var parcel : account.parcels().entrySet()) {
            int hatched = account.fates().stream()
                    .filter(f -> f.fate() == Fate.SALEABLE && f.of().ids().equals(List.of(parcel.getKey())))
                    .mapToInt(f -> f.eggs())
                    .sum();
            assertEquals(
                    printed.get(parcel.getKey().load().tray().text()),
                    percent(1, hatched, parcel.getValue().eggs()));
        }
    }

    @Test
    void breakOutOfAStandardCycle_givesThePrintedTable_inTheWorkedExample() {
        keep(TableReader.read(Path.of("..", "docs", "examples", "break-out.csv")));
        var account = farm.account("Table 1");
        assertEquals("95.5", percent(1, fertile(account), account.eggsSet()));
        assertEquals("85.00", percent(2, account.eggs(Fate.SALEABLE), account.eggsSet()));
        // What docs/examples/break-out.md says, worked out by hand from Table 1: 85 of 95.5, and 86.25 of 95.5.
        assertEquals("89.01", percent(2, account.eggs(Fate.SALEABLE), fertile(account)));
        assertEquals("90.3", percent(1, 8500 + 100 + 25, fertile(account)));
        assertEquals(
                Map.of(
                        Fate.INFERTILE, 450,
                        Fate.EARLY_DEAD, 250,
                        Fate.MID_DEAD, 250,
                        Fate.LATE_DEAD, 250,
                        Fate.PIPPED_DEAD, 125,
                        Fate.CONTAMINATED, 50,
                        Fate.DEAD_IN_BASKET, 25,
                        Fate.CULLED, 100,
                        Fate.SALEABLE, 8500),
                farm.fates("Table 1"));
    }

    @Test
    void everyPublishedFile_mayStandInOneBook() throws IOException {
        for (var file : List.of(
                "pheasant_winter_hatch.csv",
                "partridge_two_trials.csv",
                "bobwhite_captive.csv",
                "quail_cold_storage.csv")) {
            keep(file);
        }
        assertEquals(5, Ledger.of(farm.book()).picture().sets().size());
    }
}
