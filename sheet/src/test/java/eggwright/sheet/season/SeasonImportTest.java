package eggwright.sheet.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Withdrawn;
import eggwright.book.picture.Fate;
import eggwright.book.picture.Parcel;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SeasonImportTest {
    private static final String LONG =
            "set,set_on,species,pen,tray,machine,section,laid_from,laid_to,eggs,candled_on,clear,blood_ring,dead,cracked,"
                    + "rot,doubtful,transferred_on,transferred,hatched_on,saleable,culled,dead_in_basket,opened,"
                    + "clears_opened,infertile,early_dead,mid_dead,late_dead,pipped_dead,contaminated,malformed";
    private static final String FULL_ROW =
            "14,2027-04-05,pheasant,Oak,1,North,top,2027-03-29,2027-04-04,100,2027-04-13,"
                    + "10,2,3,1,0,4,2027-04-26,84,2027-04-29,70,2,1,15,4,3,1,2,5,3,1,0";

    private final Seasons farm = new Seasons();

    private static List<String> kinds(List<eggwright.book.store.Offered> offered) {
        return offered.stream()
                .map(o -> o.entry().happened().toLocalDateTime() + " "
                        + o.entry().payload().kindWord())
                .toList();
    }

    @Test
    void row_becomesEntries_inTheOrderOfTheWork() {
        var entries = farm.keep(LONG, FULL_ROW);
        assertEquals(
                List.of(
                        "2027-04-05T08:00 eggs-set",
                        "2027-04-13T10:00 looked",
                        "2027-04-26T11:00 transferred",
                        "2027-04-29T12:00 taken-off",
                        "2027-04-29T13:00 broken-out"),
                kinds(entries.offered()));
        assertEquals(1, entries.newRows());
        assertEquals(List.of(), entries.warnings());
        var first = entries.offered().getFirst().entry();
        assertEquals(Origin.IMPORTED, first.origin());
        assertEquals("import", first.device().text());
        assertEquals("Ines", first.who().text());
        assertEquals(8, first.id().value().version());
    }

    @Test
    void row_givesTheAccountThatItTells_withoutDiscrepancy() {
        farm.keep(LONG, FULL_ROW);
        assertEquals(List.of(), farm.ledger().picture().discrepancies());
        assertEquals(
                Map.ofEntries(
                        Map.entry(Fate.INFERTILE, 3),
                        Map.entry(Fate.CLEAR_UNOPENED, 6),
                        Map.entry(Fate.BLOOD_RING, 2),
                        Map.entry(Fate.DEAD, 3),
                        Map.entry(Fate.CRACKED, 1),
                        Map.entry(Fate.EARLY_DEAD, 1),
                        Map.entry(Fate.MID_DEAD, 2),
                        Map.entry(Fate.LATE_DEAD, 5),
                        Map.entry(Fate.PIPPED_DEAD, 3),
                        Map.entry(Fate.CONTAMINATED, 1),
                        Map.entry(Fate.DEAD_IN_BASKET, 1),
                        Map.entry(Fate.CULLED, 2),
                        Map.entry(Fate.SALEABLE, 70)),
                farm.fates("14"));
        // Fertile = eggs set - infertile - (clear - clears opened), the rule of every report.
        assertEquals(
                100 - 3 - (10 - 4),
                100
                        - farm.account("14").eggs(Fate.INFERTILE)
                        - farm.account("14").eggs(Fate.CLEAR_UNOPENED));
    }

    @Test
    void place_penAndLayDates_goIntoTheLoad() {
        farm.keep(LONG, FULL_ROW);
        Parcel parcel = farm.account("14").parcels().firstEntry().getValue();
        assertEquals("Oak", String.valueOf(parcel.lot().pen()));
        assertEquals("North top", parcel.machine() + " " + parcel.section());
        assertEquals(
                "2027-03-29 to 2027-04-04",
                parcel.lot().laidFrom() + " to " + parcel.lot().laidTo());
    }

    @Test
    void bareRow_isOnlyASetting_andItsEggsAreStillIn() {
        var entries = farm.keep(Seasons.SHORT, "14,2027-04-05,pheasant,1,100");
        assertEquals(List.of("2027-04-05T08:00 eggs-set"), kinds(entries.offered()));
        assertEquals(Map.of(Fate.IN_SETTER, 100), farm.fates("14"));
    }

    @Test
    void emptyIsNotNought_forALook() {
        assertEquals(
                List.of("Row 2, column \"candled_on\": a look without any count is not kept. Write 0 where nothing was"
                        + " found."),
                farm.warnings(Seasons.SHORT + ",candled_on,clear", "14,2027-04-05,pheasant,1,100,2027-04-13,"));
        var looked = farm.keep(Seasons.SHORT + ",candled_on,clear", "14,2027-04-05,pheasant,1,100,2027-04-13,0");
        assertEquals("2027-04-13T10:00 looked", kinds(looked.offered()).getLast());
    }

    @Test
    void sameFileAgain_addsNothing() {
        farm.keep(LONG, FULL_ROW);
        var again = farm.keep(LONG, FULL_ROW);
        assertEquals(List.of(), again.offered());
        assertEquals(0, again.newRows());
        assertEquals(1, again.knownRows());
    }

    @Test
    void changedRow_isRefused_withBothVersions() {
        farm.keep(LONG, FULL_ROW);
        assertEquals(
                "season.csv, row 2: set 14, tray 1 is in the book with other content: clear 10 in the book, 9 here;"
                        + " saleable 70 in the book, 71 here. What was imported is not overwritten: mend it in the"
                        + " book, or put the row back as it was.",
                farm.problem(LONG, FULL_ROW.replace("04-13,10,", "04-13,9,").replace(",70,", ",71,")));
    }

    @Test
    void changedDate_orAnAddedHatch_isAChangeToo() {
        farm.keep(Seasons.SHORT, "14,2027-04-05,pheasant,1,100");
        assertTrue(farm.problem(Seasons.SHORT, "14,2027-04-06,pheasant,1,100")
                .contains("set_on 2027-04-05 in the book, 2027-04-06 here"));
        assertTrue(farm.problem(Seasons.SHORT + ",hatched_on,saleable", "14,2027-04-05,pheasant,1,100,2027-04-29,80")
                .contains("hatched_on empty in the book, 2027-04-29 here; saleable empty in the book, 80 here"));
    }

    @Test
    void mendedRow_isStillTheRowThatWasImported() {
        farm.keep(LONG, FULL_ROW);
        var looked = farm.book().get(1).entry();
        farm.book().add(kept(looked, new Withdrawn(looked.id(), looked.id(), "another tray")));
        assertEquals(1, farm.keep(LONG, FULL_ROW).knownRows());
    }

    private static Kept kept(Entry like, eggwright.book.entry.Payload payload) {
        var entry = new Entry(
                eggwright.book.name.EntryId.of(1_800_000_000_000L, payload.hashCode(), 5),
                like.farm(),
                like.happened(),
                like.noted(),
                like.who(),
                like.device(),
                Origin.NOTED,
                payload,
                1);
        return new Kept(entry, Instant.parse("2027-09-02T00:00:00Z"), java.time.Duration.ZERO);
    }

    @Test
    void moreTrays_ofAKnownSet_areAdded() {
        farm.keep(Seasons.SHORT, "14,2027-04-05,pheasant,1,100");
        var more = farm.keep(Seasons.SHORT, "14,2027-04-05,pheasant,1,100", "14,2027-04-05,pheasant,2,90");
        assertEquals(1, more.newRows());
        assertEquals(1, more.knownRows());
        assertEquals(190, farm.account("14").eggsSet());
    }

    @Test
    void setOfAnotherYear_underTheSameName_isRefused_withBoth() {
        farm.keep(Seasons.SHORT, "14,2026-04-06,pheasant,1,100", "14,2026-04-06,pheasant,2,80");
        assertEquals(
                "season.csv, row 2, column \"set\": \"14\" is in the book already (set on 2026-04-06, trays 1, 2: 180"
                        + " eggs); here it is set on 2027-04-05, tray 7: 50 eggs. Give it another name here, such as one"
                        + " with the year.",
                farm.problem(Seasons.SHORT, "14,2027-04-05,pheasant,7,50"));
    }

    @Test
    void setNotedByHand_isNotImportedOver_unlessItWasWithdrawn() {
        var byHand = farm.keep(Seasons.SHORT, "14,2027-04-05,pheasant,1,100")
                .offered()
                .getFirst()
                .entry();
        farm.book().clear();
        var noted = kept(byHand, byHand.payload());
        farm.book().add(noted);
        assertEquals(
                "season.csv, row 2, column \"set\": \"14\" is in the book already, as a person noted it (set on"
                        + " 2027-04-05, tray 1: 100 eggs); here it is set on 2027-04-05, tray 1: 98 eggs. Give it"
                        + " another name here, such as one with the year.",
                farm.problem(Seasons.SHORT, "14,2027-04-05,pheasant,1,98"));
        var id = noted.entry().id();
        farm.book().add(kept(byHand, new Withdrawn(id, id, "twice")));
        assertEquals(1, farm.keep(Seasons.SHORT, "14,2027-04-05,pheasant,1,98").newRows());
    }

    @Test
    void severalSpecies_mayShareASet() {
        farm.keep(Seasons.SHORT, "14,2027-04-05,pheasant,1,100", "14,2027-04-05,Red-legged Partridges,2,80");
        assertEquals(
                2,
                farm.ledger().picture().sets().firstEntry().getValue().species().size());
    }

    @Test
    void missingDates_areTakenFromTheCustomOfTheSpecies_andSaid() {
        var lines = new String[] {
            Seasons.SHORT + ",clear,transferred,saleable",
            "14,2027-04-05,pheasant,1,100,5,95,80",
            "14,2027-04-05,pheasant,2,100,6,94,81"
        };
        assertEquals(
                List.of(
                        "Rows 2 and 3, column \"candled_on\": no date for the look: day 7 is taken, the custom for"
                                + " pheasant.",
                        "Rows 2 and 3, column \"transferred_on\": no date for the transfer: day 21 is taken, the custom"
                                + " for pheasant.",
                        "Rows 2 and 3, column \"hatched_on\": no date for the take-off: day 24 is taken, the custom for"
                                + " pheasant."),
                farm.warnings(lines));
        farm.keep(lines);
        assertEquals(List.of(), farm.ledger().picture().discrepancies());
    }

    @Test
    void missingDate_neverComesAfterALaterDateOfTheRow() {
        var entries = farm.keep(Seasons.SHORT + ",clear,transferred_on", "14,2027-04-05,pheasant,1,100,5,2027-04-10");
        assertEquals("2027-04-10T10:00 looked", kinds(entries.offered()).get(1));
    }

    @Test
    void unusualDates_onlyWarn() {
        assertEquals(
                List.of(
                        "Row 2, column \"candled_on\": 2027-05-05 is day 30; looks at pheasant are taken from day 3 to the"
                                + " hatch on day 25. Kept as it stands.",
                        "Row 3, column \"hatched_on\": 2027-04-17 is day 12; pheasant hatches from day 24 to 25. Kept as it"
                                + " stands."),
                farm.warnings(
                        Seasons.SHORT + ",candled_on,clear,hatched_on,saleable",
                        "14,2027-04-05,pheasant,1,100,2027-05-05,5,,",
                        "14,2027-04-05,pheasant,2,100,,,2027-04-17,80"));
    }

    @Test
    void clearsOpened_leftEmpty_areTheLesserOfClearAndOpened_withAWarning() {
        var lines = new String[] {
            Seasons.SHORT + ",candled_on,clear,hatched_on,saleable,opened,infertile,late_dead",
            "14,2027-04-05,pheasant,1,100,2027-04-13,10,2027-04-29,80,14,9,5"
        };
        assertEquals(
                List.of("Row 2, column \"clears_opened\": is empty; the lesser of clear and opened is taken."),
                farm.warnings(lines));
        farm.keep(lines);
        assertEquals(
                Map.of(Fate.INFERTILE, 9, Fate.LATE_DEAD, 5, Fate.SALEABLE, 80, Fate.UNACCOUNTED, 6), farm.fates("14"));
    }

    @Test
    void opened_leftEmpty_isTheSumOfTheClasses_withAWarning() {
        var lines = new String[] {
            Seasons.SHORT + ",hatched_on,saleable,late_dead,malformed", "14,2027-04-05,pheasant,1,100,2027-04-29,80,5,1"
        };
        assertEquals(
                List.of("Row 2, column \"opened\": is empty although eggs are named; the sum of the named is taken as"
                        + " opened."),
                farm.warnings(lines));
        farm.keep(lines);
        assertEquals(
                Map.of(Fate.SALEABLE, 80, Fate.LATE_DEAD, 5, Fate.MALFORMED, 1, Fate.UNACCOUNTED, 14),
                farm.fates("14"));
    }

    @Test
    void clearsOpenedOnTheEveningOfTheLook_needNoTakeOff() {
        var entries = farm.keep(
                Seasons.SHORT + ",candled_on,clear,opened,clears_opened,infertile,early_dead",
                "14,2027-04-05,pheasant,1,100,2027-04-13,10,6,6,4,2");
        assertEquals("2027-04-13T13:00 broken-out", kinds(entries.offered()).getLast());
        assertEquals(
                Map.of(Fate.INFERTILE, 4, Fate.EARLY_DEAD, 2, Fate.CLEAR_UNOPENED, 4, Fate.IN_SETTER, 90),
                farm.fates("14"));
    }

    @Test
    void moreDoubtfulThanLeft_isKeptUpToWhatWasLeft_withAWarning() {
        farm.keep(Seasons.SHORT + ",candled_on,clear,doubtful", "14,2027-04-05,pheasant,1,20,2027-04-13,15,9");
        assertEquals(List.of(), farm.ledger().picture().discrepancies());
        assertEquals(Map.of(Fate.CLEAR_UNOPENED, 15, Fate.IN_SETTER, 5), farm.fates("14"));
    }

    @Test
    void rowStaysKnown_whenTheFarmNamesItsTimeZoneLater() {
        farm.keep(LONG, FULL_ROW);
        var elsewhere = SeasonImport.read(
                Seasons.table(LONG, FULL_ROW), Seasons.farmIn(java.time.ZoneId.of("Europe/London")), farm.book());
        assertEquals(new SeasonRead.Entries(List.of(), List.of(), 0, 1), elsewhere);
    }
}
