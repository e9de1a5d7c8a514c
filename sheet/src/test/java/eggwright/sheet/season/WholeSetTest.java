package eggwright.sheet.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.name.SetName;
import eggwright.book.picture.Fate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WholeSetTest {
    private static final String HEADER = Seasons.SHORT
            + ",candled_on,clear,transferred_on,transferred,hatched_on,saleable,culled,opened,clears_opened,late_dead";
    private static final String TRAY_1 = "14,2027-04-05,pheasant,1,60,2027-04-13,6,,,,,,,,";
    private static final String TRAY_2 = "14,2027-04-05,pheasant,2,40,2027-04-13,2,,,,,,,,";
    private static final String ALL = "14,2027-04-05,pheasant,all,100,,,2027-04-26,92,2027-04-29,80,2,8,0,8";

    private final Seasons farm = new Seasons();

    @Test
    void countsOfTheWholeSet_staySo_andTheAccountAddsUp() {
        farm.keep(HEADER, TRAY_1, TRAY_2, ALL);
        assertEquals(List.of(), farm.ledger().picture().discrepancies());
        assertEquals(
                Map.of(
                        Fate.CLEAR_UNOPENED,
                        8,
                        Fate.SALEABLE,
                        80,
                        Fate.CULLED,
                        2,
                        Fate.LATE_DEAD,
                        8,
                        Fate.UNACCOUNTED,
                        2),
                farm.fates("14"));
        var takenOff = farm.book().stream()
                .map(k -> k.entry().payload())
                .filter(TakenOff.class::isInstance)
                .map(TakenOff.class::cast)
                .toList();
        assertEquals(
                List.of(Scope.ofSet(new SetName("14"))),
                takenOff.stream().map(TakenOff::counted).toList());
    }

    @Test
    void wholeSet_countedAgain_isKnown_inAnyOrderOfRows() {
        farm.keep(HEADER, TRAY_1, TRAY_2, ALL);
        var again = farm.keep(HEADER, ALL, TRAY_2, TRAY_1);
        assertEquals(0, again.newRows());
        assertEquals(3, again.knownRows());
    }

    @Test
    void wholeSet_aloneInALaterFile_speaksOfTheTraysInTheBook() {
        farm.keep(HEADER, TRAY_1, TRAY_2);
        farm.keep(HEADER, ALL);
        assertEquals(100, farm.account("14").eggsSet());
        assertEquals(80, farm.account("14").eggs(Fate.SALEABLE));
        assertEquals(List.of(), farm.ledger().picture().discrepancies());
    }

    @Test
    void wholeSet_withoutTrays_isItselfTheLoad() {
        farm.keep(HEADER, ALL.replace(",all,", ",ALL,"));
        assertEquals(
                "[all]",
                farm.ledger()
                        .picture()
                        .sets()
                        .firstEntry()
                        .getValue()
                        .loads()
                        .keySet()
                        .toString());
        assertEquals(
                "season.csv, row 2, column \"set\": \"14\" is in the book as one load without trays (set on 2027-04-05,"
                        + " tray all: 100 eggs); here it is set on 2027-04-05, tray 1: 60 eggs. Give it another name here,"
                        + " such as one with the year.",
                farm.problem(HEADER, TRAY_1));
    }

    @Test
    void eggsOfTheWhole_areThoseOfItsTrays() {
        assertEquals(
                "season.csv, row 4, column \"eggs\": \"101\" is not the sum of the trays of set 14, which hold 100 eggs."
                        + " The tray \"all\" stands for all trays of its set together.",
                farm.problem(HEADER, TRAY_1, TRAY_2, ALL.replace("all,100", "all,101")));
    }

    @Test
    void count_givenForTraysAndForTheWhole_isRefused() {
        assertEquals(
                "season.csv, row 4, column \"clear\": \"8\" is counted for the whole set, and 8 for its trays. Write a count"
                        + " in the rows of the trays or in that of the whole set, not in both.",
                farm.problem(HEADER, TRAY_1, TRAY_2, ALL.replace("100,,,", "100,2027-04-13,8,")));
    }

    @Test
    void moreChicksThanTheTraysHadLeft_areRefused() {
        assertEquals(
                "season.csv, row 4, column \"saleable\": \"92\" is too many: saleable 92, culled 2 are more than the 92"
                        + " transferred. Mend the counts.",
                farm.problem(HEADER, TRAY_1, TRAY_2, ALL.replace(",80,2,8,0,8", ",92,2,,,")));
    }

    @Test
    void dateOfTheHatch_repeatedInEveryRow_isOneTakeOff() {
        var hatched = ",,,2027-04-29,";
        farm.keep(
                HEADER,
                TRAY_1.replace(",,,,,,,,", hatched + ",,,,"),
                TRAY_2.replace(",,,,,,,,", hatched + "0,,,,"),
                ALL);
        assertEquals(
                1,
                farm.book().stream()
                        .filter(k -> k.entry().payload() instanceof TakenOff)
                        .count());
        assertEquals(80, farm.account("14").eggs(Fate.SALEABLE));
    }

    @Test
    void noChickAnywhere_isStillATakeOff() {
        farm.keep(
                Seasons.SHORT + ",hatched_on,saleable",
                "14,2027-04-05,pheasant,1,60,2027-04-29,0",
                "14,2027-04-05,pheasant,2,40,2027-04-29,0",
                "14,2027-04-05,pheasant,all,100,2027-04-29,0");
        assertEquals(Map.of(Fate.UNACCOUNTED, 100), farm.fates("14"));
    }

    @Test
    void chicksByTray_andCullsForTheWholeSet_addUp() {
        var header = Seasons.SHORT + ",hatched_on,saleable,culled,opened,late_dead";
        farm.keep(
                header,
                "14,2027-04-05,pheasant,1,60,2027-04-29,50,,,",
                "14,2027-04-05,pheasant,2,40,2027-04-29,30,,,",
                "14,2027-04-05,pheasant,all,100,2027-04-29,,5,6,6");
        assertEquals(List.of(), farm.ledger().picture().discrepancies());
        assertEquals(
                Map.of(Fate.SALEABLE, 80, Fate.CULLED, 5, Fate.LATE_DEAD, 6, Fate.UNACCOUNTED, 9), farm.fates("14"));
    }

    @Test
    void eggsOpenedForTheWholeSet_areOpenedAfterTheTraysWereTakenOff() {
        var entries = farm.keep(
                Seasons.SHORT + ",hatched_on,saleable,opened,late_dead",
                "14,2027-04-05,pheasant,1,60,2027-05-02,50,,",
                "14,2027-04-05,pheasant,all,60,,,6,6");
        assertEquals(
                "2027-05-02T13:30",
                entries.offered().getLast().entry().happened().toLocalDateTime().toString());
        assertEquals(Map.of(Fate.SALEABLE, 50, Fate.LATE_DEAD, 6, Fate.UNACCOUNTED, 4), farm.fates("14"));
    }

    @Test
    void fewerTransferredThanLeft_forTheWholeSet_isKeptAsARemark() {
        var lines = new String[] {HEADER, TRAY_1, TRAY_2, ALL.replace(",92,2027-04-29", ",90,2027-04-29")};
        assertTrue(farm.warnings(lines).getFirst().contains("fewer eggs were transferred than were left"));
        farm.keep(lines);
        assertTrue(farm.problem(HEADER, TRAY_1, TRAY_2, ALL.replace(",92,2027-04-29", ",91,2027-04-29"))
                .contains("transferred 90 in the book, 91 here"));
    }

    @Test
    void anotherTray_inASetCountedAsAWhole_isRefused() {
        farm.keep(HEADER, TRAY_1, TRAY_2, ALL);
        assertTrue(farm.problem(HEADER, "14,2027-04-05,pheasant,3,40,,,,,,,,,,")
                .contains("is in the book with counts of the whole set"));
    }
}
