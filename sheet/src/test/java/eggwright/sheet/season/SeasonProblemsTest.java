package eggwright.sheet.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every slip that a season file may hold, with what a person is told. */
class SeasonProblemsTest {
    private final Seasons farm = new Seasons();

    private static String row2(String column, String rest) {
        return "season.csv, row 2, column \"" + column + "\": " + rest;
    }

    @Test
    void unknownColumn_isNamed_withTheNearOne() {
        assertEquals(
                "season.csv, row 1, column \"saleabel\": a season has no column of this name. Did you mean \"saleable\"?",
                farm.problem(Seasons.SHORT + ",saleabel", "14,2027-04-05,pheasant,1,100,5"));
        assertTrue(farm.problem(Seasons.SHORT + ",weather", "14,2027-04-05,pheasant,1,100,5")
                .endsWith("a season has no column of this name. The columns are "
                        + String.join(", ", SeasonColumn.words()) + "."));
    }

    @Test
    void missingColumns_areNamed() {
        assertEquals(
                "season.csv, row 1: the header lacks set_on, eggs. Every season names set, set_on, species, tray and eggs.",
                farm.problem("set,species,tray", "14,pheasant,1"));
    }

    @Test
    void capitalsInTheHeader_doNotMatter_unlessAColumnThenStandsTwice() {
        assertEquals(
                1,
                farm.keep("Set,Set_On,SPECIES,tray,eggs", "14,2027-04-05,pheasant,1,9")
                        .newRows());
        assertEquals(
                "season.csv, row 1, column \"Eggs\": stands twice, as columns E and F. Keep one of them.",
                farm.problem(Seasons.SHORT + ",Eggs", "14,2027-04-05,pheasant,1,100,5"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    2027-02-30 | is not in the calendar. Write a date that exists, such as 2027-04-05.
                    2027-13-01 | is not in the calendar. Write a date that exists, such as 2027-04-05.
                    1899-12-31 | is outside the years that Eggwright keeps. Years run from 1900 to 2099.
                    2100-01-01 | is outside the years that Eggwright keeps. Years run from 1900 to 2099.
                    5.4.2027   | is not written as year-month-day. Write the fifth of April 2027 as 2027-04-05.
                    04/05/2027 | is not written as year-month-day. Write the fifth of April 2027 as 2027-04-05.
                    2027-4-5   | is not written as year-month-day. Write the fifth of April 2027 as 2027-04-05.
                    soon       | is not written as year-month-day. Write the fifth of April 2027 as 2027-04-05.
                    """)
    void date_thatIsNone(String typed, String said) {
        assertEquals(
                row2("set_on", "\"" + typed + "\" " + said),
                farm.problem(Seasons.SHORT, "14," + typed + ",pheasant,1,100"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    12.5    | is not a whole number. Eggs are counted whole: write digits only, without a point or a comma.
                    1,5     | is not a whole number. Eggs are counted whole: write digits only, without a point or a comma.
                    1,200   | is not a whole number. Eggs are counted whole: write digits only, without a point or a comma.
                    1.200,5 | is not a whole number. Eggs are counted whole: write digits only, without a point or a comma.
                    -3      | is below zero. Write a whole number from 0 to 1000000.
                    1000001 | is more than a row may hold. Write a whole number from 0 to 1000000.
                    99999999999999999999 | is more than a row may hold. Write a whole number from 0 to 1000000.
                    ten     | is not a number. Write a whole number from 0 to 1000000, or leave the cell empty.
                    1e3     | is not a number. Write a whole number from 0 to 1000000, or leave the cell empty.
                    0       | eggs make no tray. Write at least 1, or leave the row out.
                    """)
    void count_thatIsNone(String typed, String said) {
        assertEquals(
                row2("eggs", "\"" + typed + "\" " + said),
                farm.problem(Seasons.SHORT.replace(',', ';'), "14;2027-04-05;pheasant;1;" + typed));
    }

    @Test
    void aMillionEggs_mayStandInARow() {
        assertEquals(
                1, farm.keep(Seasons.SHORT, "14,2027-04-05,pheasant,1,1000000").newRows());
    }

    @Test
    void speciesWord_thatIsUnknown_bringsTheNearOne() {
        assertEquals(
                row2("species", "\"phesant\" is not a species Eggwright knows. Did you mean pheasant?"),
                farm.problem(Seasons.SHORT, "14,2027-04-05,phesant,1,100"));
    }

    @Test
    void requiredCell_thatIsEmpty_isNamed() {
        assertEquals(
                row2("tray", "is empty. Every row gives tray."),
                farm.problem(Seasons.SHORT, "14,2027-04-05,pheasant,,100"));
    }

    @Test
    void name_thatIsTooLong_isRefused_andShownShort() {
        assertEquals(
                row2(
                        "set",
                        "\"" + "x".repeat(60) + "…\" is no name. A name has at most 80 characters and no line break."),
                farm.problem(Seasons.SHORT, "x".repeat(81) + ",2027-04-05,pheasant,1,100"));
    }

    @Test
    void trayTwiceInASet_namesBothRows() {
        assertEquals(
                "season.csv, row 4, column \"tray\": \"1\" stands in set 14 twice (row 2). Write each tray of a set in one"
                        + " row.",
                farm.problem(
                        Seasons.SHORT,
                        "14,2027-04-05,pheasant,1,100",
                        "14,2027-04-05,pheasant,2,100",
                        "14,2027-04-05,pheasant,1,90"));
    }

    @Test
    void setOnTwoDates_isRefused() {
        assertEquals(
                "season.csv, row 3, column \"set_on\": \"2027-04-06\" is not the date of set 14 in row 2 (2027-04-05). A set"
                        + " goes in on one day; give the other trays a set of their own.",
                farm.problem(Seasons.SHORT, "14,2027-04-05,pheasant,1,100", "14,2027-04-06,pheasant,2,100"));
    }

    @Test
    void datesOutOfOrder_areRefused() {
        assertEquals(
                row2(
                        "hatched_on",
                        "\"2027-04-01\" is before set_on (2027-04-05). The dates of a row run: laid, set, candled,"
                                + " transferred, hatched."),
                farm.problem(Seasons.SHORT + ",hatched_on", "14,2027-04-05,pheasant,1,100,2027-04-01"));
        assertEquals(
                row2(
                        "set_on",
                        "\"2027-04-05\" is before laid_to (2027-04-06). The dates of a row run: laid, set, candled,"
                                + " transferred, hatched."),
                farm.problem(Seasons.SHORT + ",laid_to", "14,2027-04-05,pheasant,1,100,2027-04-06"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    50,2,3,,,,,,,    | eggs | "54" is less than the 55 taken out at the lamp (clear 50, blood_ring 2, dead 3). Mend the eggs set, or the counts.
                    4,,,51,,,,,,     | transferred | "51" is more than the 50 left of 54 set after 4 were taken out. Mend the count, or those at the lamp.
                    4,,,50,49,2,,,,  | saleable | "49" is too many: saleable 49, culled 2 are more than the 50 transferred. Mend the counts.
                    4,,,,49,2,,,,    | saleable | "49" is too many: saleable 49, culled 2 are more than the 50 left after the lamp. Mend the counts.
                    4,,,,40,,5,,2,4  | opened | "5" is less than the 6 eggs named (infertile 2, late_dead 4). Write every egg that was opened.
                    4,,,,40,,5,6,,5  | clears_opened | "6" is more than the 5 eggs opened. It counts those of the opened eggs that were clears.
                    4,,,,40,,5,5,5,  | clears_opened | "5" is more than the 4 clears taken out. It counts those of the clears that were opened.
                    4,,,,40,,15,0,,9 | opened | "15" is too many: beside 0 clears, 15 eggs were opened, but only 10 were neither clear nor left the shell. Mend the counts.
                    """)
    void counts_thatContradictEachOther(String cells, String column, String said) {
        assertEquals(
                row2(column, said),
                farm.problem(
                        Seasons.SHORT
                                + ",clear,blood_ring,dead,transferred,saleable,culled,opened,clears_opened,infertile"
                                + ",late_dead",
                        "14,2027-04-05,pheasant,1,54," + cells));
    }

    @Test
    void daysThatRunPast2099_areRefused() {
        assertEquals(
                row2("hatched_on", "would be 2100-01-13, and years run to 2099. Mend set_on."),
                farm.problem(Seasons.SHORT + ",saleable", "14,2099-12-20,pheasant,1,54,40"));
    }

    @Test
    void severalSlips_areNamedAtOnce_inTheOrderOfTheRows() {
        assertEquals(
                List.of(
                        row2(
                                "set_on",
                                "\"2027-02-30\" is not in the calendar. Write a date that exists, such as"
                                        + " 2027-04-05."),
                        row2("eggs", "\"-3\" is below zero. Write a whole number from 0 to 1000000."),
                        "season.csv, row 3, column \"eggs\": \"10\" is less than the 12 taken out at the lamp (clear 12)."
                                + " Mend the eggs set, or the counts.",
                        "season.csv, row 4, column \"species\": \"bobwite\" is not a species Eggwright knows. Did you mean"
                                + " bobwhite?"),
                farm.problems(
                        Seasons.SHORT + ",clear",
                        "14,2027-02-30,pheasant,1,-3,",
                        "15,2027-04-05,pheasant,1,10,12",
                        "15,2027-04-05,bobwite,2,10,"));
    }

    @Test
    void moreThanFiftySlips_areCounted() {
        var lines = new ArrayList<>(List.of(Seasons.SHORT));
        for (int i = 0; i < 70; i++) {
            lines.add("14,2027-04-05,pheasant," + i + ",-" + (i + 1));
        }
        var refused = assertInstanceOf(SeasonRead.Refused.class, farm.read(lines.toArray(String[]::new)));
        assertEquals(50, refused.problems().size());
        assertEquals(20, refused.beyond());
    }
}
