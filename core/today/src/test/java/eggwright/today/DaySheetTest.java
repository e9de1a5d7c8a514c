package eggwright.today;

import static eggwright.today.Farmhouse.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.ClassCount;
import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.LoadPlaced;
import eggwright.book.entry.Looked;
import eggwright.book.entry.MachineAdded;
import eggwright.book.entry.MachineCleaned;
import eggwright.book.entry.MachineKind;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Scope;
import eggwright.book.entry.SpeciesOverridden;
import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import eggwright.today.task.Habit;
import eggwright.today.task.LeftOpen;
import eggwright.today.task.NotLooked;
import eggwright.today.task.Practice;
import eggwright.today.task.Reason;
import eggwright.today.task.Target;
import eggwright.today.task.TaskKind;
import eggwright.today.task.TrayCount;
import eggwright.today.task.Urgency;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import eggwright.trade.BreakOutClass;
import eggwright.trade.ProfileField;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.trade.caution.Cautions;
import eggwright.trade.caution.Place;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Set 14: two trays of pheasant eggs, on Monday 5 April 2027 at 8. Work at the lamp is done at 18. */
class DaySheetTest {
    private static Farmhouse pheasants() {
        var farm = Farmhouse.usual();
        farm.note(on("2027-04-05T08:00"), setting("14", load(10, Species.PHEASANT, 50), load(9, Species.PHEASANT, 54)));
        return farm;
    }

    // Candling: day 7 or 8 is the custom (from memory in the trade's table).

    @Test
    void candling_isDueOnItsDay_withTheEggsThatEachTrayShouldHold() {
        var task = of(TaskKind.CANDLE, pheasants().sheet(on("2027-04-12T09:00")).due())
                .getFirst();

        assertEquals(
                new Work.OfTrays(
                        set("14"),
                        7,
                        List.of(Species.PHEASANT),
                        List.of(new TrayCount(tray(9), 54), new TrayCount(tray(10), 50))),
                task.work());
        assertEquals(new Where(SETTER, SHELF), task.where());
        assertEquals(Urgency.LATER_TODAY, task.urgency());
        assertEquals(
                "2027-04-12T18:00-05:00[America/Chicago]", task.when().from().toString());
        assertEquals(new Target.Form("looked", set("14"), null, null, null), task.target());
        var custom = SpeciesProfile.of(Species.PHEASANT).candlingDays().source();
        assertEquals(
                List.of(new Reason.SpeciesDay(Species.PHEASANT, ProfileField.CANDLING_DAYS, 7, custom)),
                task.reasons());
        assertEquals(List.of(Place.ROTTEN_EGGS, Place.CANDLING_LAMP), task.cautions());
    }

    @ParameterizedTest
    @CsvSource({
        "2027-04-11T09:00,COMING",
        "2027-04-12T18:00,NOW",
        "2027-04-13T09:00,STILL_POSSIBLE",
        "2027-04-14T23:59,STILL_POSSIBLE",
        "2027-04-15T00:00,OVER"
    })
    void candling_isStillPossibleForTwoDays_andNeverOverdue(String now, Urgency urgency) {
        assertEquals(urgency, standing(pheasants().sheet(on(now)), TaskKind.CANDLE));
    }

    @Test
    void aLookNotTaken_isAQuietLine_untilTheTransfer() {
        var farm = pheasants();
        var sheet = farm.sheet(on("2027-04-15T09:00"));
        assertTrue(sheet.overdue().isEmpty());
        assertEquals(
                List.of(new NotLooked(
                        set("14"),
                        7,
                        new Where(SETTER, SHELF),
                        List.of(new TrayCount(tray(9), 54), new TrayCount(tray(10), 50)))),
                sheet.notLooked());

        farm.note(on("2027-04-26T18:00"), transfer(HATCHER, "14", 9, 10));
        assertEquals(List.of(), farm.sheet(on("2027-04-26T19:00")).notLooked());
    }

    @Test
    void candling_isAskedOnlyOfTheTraysThatWereNotLookedAt() {
        var farm = pheasants();
        farm.note(on("2027-04-12T18:30"), look("14", 9, FindingCount.removed(Finding.CLEAR, 5)));

        var sheet = farm.sheet(on("2027-04-13T09:00"));
        assertEquals(
                List.of(new TrayCount(tray(10), 50)),
                sheet.all(TaskKind.CANDLE).getFirst().trays());
        assertEquals(
                new Target.Form("looked", set("14"), tray(10), null, null),
                sheet.all(TaskKind.CANDLE).getFirst().target());
        assertEquals(List.of(), farm.sheet(on("2027-04-12T19:00")).notLooked());
    }

    @Test
    void candling_isDone_whenTheWholeSetWasLookedAt_aDayEarly() {
        var farm = pheasants();
        farm.note(on("2027-04-11T18:30"), new Looked(Scope.ofSet(set("14")), null, null, List.of(), 0, null));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-04-12T09:00")), TaskKind.CANDLE));
    }

    @Test
    void candling_isNotDone_byHalfATray_butByTwoHalves() {
        var farm = pheasants();
        farm.note(on("2027-04-12T18:00"), look("14", 10));
        var half = new Looked(Scope.ofLoad(set("14"), tray(9)), 27, null, List.of(), 0, null);
        farm.note(on("2027-04-12T18:10"), half);
        assertEquals(Urgency.NOW, standing(farm.sheet(on("2027-04-12T19:00")), TaskKind.CANDLE));
        farm.note(on("2027-04-13T18:10"), half);
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-04-13T19:00")), TaskKind.CANDLE));
    }

    @Test
    void candlingDays_ofTheFarm_comeBeforeTheCustom_andEndWithTheTransfer() {
        var farm = pheasants();
        farm.note(on("2027-03-02T08:00"), habits(null, List.of(8, 15, 30)));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-04-28T09:00")), TaskKind.CANDLE));
        var task = farm.sheet(on("2027-04-13T09:00")).all(TaskKind.CANDLE).getFirst();
        assertEquals(Urgency.LATER_TODAY, task.urgency());
        assertEquals(List.of(new Reason.FarmHabit(Habit.CANDLING_DAYS)), task.reasons());
        assertEquals(Urgency.LATER_TODAY, standing(farm.sheet(on("2027-04-20T09:00")), TaskKind.CANDLE), "day 15");
    }

    @Test
    void candling_isNeverAsked_whereTheFarmNeverCandles() {
        var farm = pheasants();
        farm.note(on("2027-03-02T08:00"), habits(null, List.of()));
        var sheet = farm.sheet(on("2027-04-16T09:00"));
        assertEquals(List.of(), sheet.all(TaskKind.CANDLE));
        assertEquals(List.of(), sheet.notLooked());
    }

    @Test
    void aSpeciesFigureOfTheFarm_isStrongerThanItsHabit() {
        var farm = pheasants();
        farm.note(on("2027-03-02T08:00"), habits(null, List.of(8)));
        farm.note(on("2027-03-02T08:05"), new SpeciesOverridden(Species.PHEASANT, "candling_days", "10"));
        var reason = farm.sheet(on("2027-04-15T09:00"))
                .all(TaskKind.CANDLE)
                .getFirst()
                .reasons()
                .getFirst();
        assertEquals(
                "this farm, since 2027-03-02",
                ((Reason.SpeciesDay) reason).source().words());
    }

    // Transfer: day 21 of pheasant, TAMU-B6092 (seen in a copy, attribution recalled).

    @ParameterizedTest
    @CsvSource({
        "2027-04-25T09:00,COMING",
        "2027-04-26T09:00,LATER_TODAY",
        "2027-04-26T18:00,NOW",
        "2027-04-27T00:00,OVERDUE",
        "2027-04-30T23:00,OVERDUE",
        "2027-05-01T09:00,OVER"
    })
    void transfer_isDueOnDay21_andOverdueUntilTheHatchIsOver(String now, Urgency urgency) {
        assertEquals(urgency, standing(pheasants().sheet(on(now)), TaskKind.TRANSFER));
    }

    @Test
    void transfer_saysWhy() {
        var day = SpeciesProfile.of(Species.PHEASANT).transferDay();
        assertEquals(
                List.of(new Reason.SpeciesDay(Species.PHEASANT, ProfileField.TRANSFER_DAY, 21, day.source())),
                pheasants()
                        .sheet(on("2027-04-26T09:00"))
                        .all(TaskKind.TRANSFER)
                        .getFirst()
                        .reasons());
    }

    @Test
    void transfer_isDone_trayByTray() {
        var farm = pheasants();
        farm.note(on("2027-04-26T18:00"), transfer(HATCHER, "14", 9));
        var left = farm.sheet(on("2027-04-26T19:00")).all(TaskKind.TRANSFER);
        assertEquals(List.of(new TrayCount(tray(10), 50)), left.getFirst().trays());
        farm.note(on("2027-04-26T18:30"), transfer(HATCHER, "14", 10));
        assertEquals(List.of(), farm.sheet(on("2027-04-26T19:00")).all(TaskKind.TRANSFER));
    }

    @Test
    void transfer_followsTheFarmsOwnDay() {
        var farm = pheasants();
        farm.note(on("2027-03-02T08:05"), new SpeciesOverridden(Species.PHEASANT, "transfer_day", "20"));
        assertEquals(Urgency.LATER_TODAY, standing(farm.sheet(on("2027-04-25T09:00")), TaskKind.TRANSFER));
    }

    @Test
    void anUnreadableFigure_leavesTheCustom() {
        var farm = pheasants();
        farm.note(on("2027-03-02T08:05"), new SpeciesOverridden(Species.PHEASANT, "transfer_day", "three weeks"));
        farm.note(on("2027-03-02T08:06"), new SpeciesOverridden(Species.PHEASANT, "moon", "full"));
        assertEquals(Urgency.LATER_TODAY, standing(farm.sheet(on("2027-04-26T09:00")), TaskKind.TRANSFER));
    }

    @Test
    void twoSpecies_inOneSet_goTheirOwnWays() {
        var farm = Farmhouse.usual();
        farm.note(on("2027-04-05T08:00"), setting("14", load(1, Species.PHEASANT, 54), load(2, Species.CHUKAR, 60)));
        var sheet = farm.sheet(on("2027-04-25T09:00"));
        // Chukar day 20, pheasant day 21: TAMU-B6092.
        assertEquals(
                List.of(new TrayCount(tray(2), 60)),
                of(TaskKind.TRANSFER, sheet.due()).getFirst().trays());
        assertEquals(
                List.of(new TrayCount(tray(1), 54)),
                of(TaskKind.TRANSFER, sheet.coming()).getFirst().trays());
    }

    @Test
    void traysCountedTogether_haveNoNumberOfTheirOwn() {
        var farm = Farmhouse.usual();
        farm.note(on("2027-04-05T08:00"), setting("14", load(9, Species.PHEASANT, 54), load(10, Species.PHEASANT, 50)));
        farm.note(
                on("2027-04-12T18:30"),
                new Looked(
                        Scope.ofSet(set("14")), null, null, List.of(FindingCount.removed(Finding.CLEAR, 9)), 0, null));
        var work = (Work.OfTrays) farm.sheet(on("2027-04-26T09:00"))
                .all(TaskKind.TRANSFER)
                .getFirst()
                .work();
        assertEquals(List.of(new TrayCount(tray(9), null), new TrayCount(tray(10), null)), work.trays());
        assertEquals(2, work.traysCountedTogether());
        assertEquals(0, work.eggs());
    }

    @Test
    void traysInDifferentSections_areTasksOfTheirOwn_andAPooledTrayIsGone() {
        var farm = pheasants();
        farm.note(on("2027-04-06T08:00"), new LoadPlaced(set("14"), tray(9), SETTER, new SectionName("1"), null));
        assertEquals(
                List.of(new Where(SETTER, new SectionName("1")), new Where(SETTER, SHELF)),
                farm.sheet(on("2027-04-12T09:00")).all(TaskKind.CANDLE).stream()
                        .map(t -> t.where())
                        .toList());
        farm.note(
                on("2027-04-06T09:00"), new EggsMoved(set("14"), tray(9), null, null, set("14"), tray(10), null, null));
        assertEquals(
                List.of(new TrayCount(tray(10), 104)),
                farm.sheet(on("2027-04-12T09:00")).all(TaskKind.CANDLE).stream()
                        .flatMap(t -> t.trays().stream())
                        .toList());
    }

    // Stop turning, raise humidity: only one machine with eggs of one age is told.

    @Test
    void aSetter_isNeverToldToStopTurning_evenWithOneSetInIt() {
        for (var day = LocalDate.of(2027, 4, 5); day.isBefore(LocalDate.of(2027, 5, 2)); day = day.plusDays(1)) {
            var sheet = pheasants().sheet(day.atTime(9, 0));
            assertEquals(List.of(), sheet.all(TaskKind.STOP_TURNING));
            assertEquals(List.of(), sheet.all(TaskKind.RAISE_HUMIDITY));
        }
    }

    private static final MachineName CABINET = new MachineName("Cabinet");

    private static Farmhouse cabinet() {
        var farm = Farmhouse.usual();
        farm.note(
                on("2027-03-01T10:00"), new MachineAdded(CABINET, MachineKind.SETTER_AND_HATCHER, List.of(), null, ""));
        farm.note(on("2027-04-05T08:00"), setting("14", load(1, CABINET, Species.PHEASANT, 54)));
        return farm;
    }

    @Test
    void oneMachineOfOneAge_isToldToStopTurningAndBeWetter_onTransferDay() {
        var sheet = cabinet().sheet(on("2027-04-26T19:00"));
        assertEquals(Urgency.NOW, standing(sheet, TaskKind.STOP_TURNING));
        assertEquals(Urgency.NOW, standing(sheet, TaskKind.RAISE_HUMIDITY));
        assertEquals(List.of(), sheet.all(TaskKind.TRANSFER));
        assertEquals(List.of(), sheet.all(TaskKind.PREPARE_HATCHER));
        // By the first pip, day 22.5, it is too late to be told.
        assertEquals(Urgency.OVER, standing(cabinet().sheet(on("2027-04-28T09:00")), TaskKind.RAISE_HUMIDITY));
    }

    @Test
    void oneMachineOfSeveralAges_isTold_toTransferOnly() {
        var farm = cabinet();
        farm.note(on("2027-04-12T08:00"), setting("15", load(2, CABINET, Species.PHEASANT, 54)));
        var sheet = farm.sheet(on("2027-04-26T19:00"));
        assertEquals(Urgency.NOW, standing(sheet, TaskKind.TRANSFER));
        assertEquals(List.of(), sheet.all(TaskKind.STOP_TURNING));
        assertEquals(List.of(), sheet.all(TaskKind.RAISE_HUMIDITY));
    }

    // Hatch. First pip from day 22.5 (from memory), period 24 to 25 (TAMU-B6092): hatch from day 24, take-off day 25.

    @Test
    void theHatch_isExpected_fromTheFirstPipOn() {
        var farm = pheasants();
        farm.note(on("2027-04-26T18:00"), transfer(HATCHER, "14", 9, 10));
        assertEquals(Urgency.LATER_TODAY, standing(farm.sheet(on("2027-04-27T19:00")), TaskKind.EXPECT_PIPS));
        assertEquals(Urgency.NOW, standing(farm.sheet(on("2027-04-28T08:00")), TaskKind.EXPECT_PIPS));
        assertEquals(Urgency.NOW, standing(farm.sheet(on("2027-04-28T08:00")), TaskKind.WARM_BROODER));
        var hatching = farm.sheet(on("2027-04-29T08:00"));
        assertEquals(Urgency.NOW, standing(hatching, TaskKind.EXPECT_HATCH));
        assertEquals(
                Where.at(HATCHER),
                hatching.all(TaskKind.EXPECT_HATCH).getFirst().where());
    }

    @ParameterizedTest
    @CsvSource({
        "2027-04-29T20:00,COMING",
        "2027-04-30T07:00,LATER_TODAY",
        "2027-04-30T23:00,NOW",
        "2027-05-01T00:00,OVERDUE",
        "2027-05-30T09:00,OVERDUE"
    })
    void takeOff_isDueOnDay25_andOverdueTheDayAfter(String now, Urgency urgency) {
        var farm = pheasants();
        farm.note(on("2027-04-26T18:00"), transfer(HATCHER, "14", 9, 10));
        assertEquals(urgency, standing(farm.sheet(on(now)), TaskKind.TAKE_OFF));
    }

    @Test
    void takeOff_isNotOver_whileMoreChicksMayCome() {
        var farm = pheasants();
        farm.note(on("2027-04-26T18:00"), transfer(HATCHER, "14", 9, 10));
        farm.note(on("2027-04-30T09:00"), pull("14", Pull.MORE_TO_COME, 60));
        assertEquals(Urgency.NOW, standing(farm.sheet(on("2027-04-30T20:00")), TaskKind.TAKE_OFF));
        farm.note(on("2027-04-30T19:00"), pull("14", Pull.LAST, 20));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-04-30T20:00")), TaskKind.TAKE_OFF));
    }

    @Test
    void aSetWithoutAnEnd_isAGapInTheBook_afterAMonth() {
        var sheet = pheasants().sheet(on("2027-05-31T09:00"));
        assertEquals(List.of(), sheet.overdue());
        assertEquals(List.of(), sheet.due());
        assertEquals(List.of(new LeftOpen(set("14"), LocalDate.of(2027, 4, 30))), sheet.leftOpen());
    }

    @Test
    void aHatcherThatWasNotNoted_isNotGuessed() {
        var farm = pheasants();
        farm.note(on("2027-04-26T18:00"), transfer(null, "14", 9, 10));
        assertEquals(
                Where.NOT_SAID,
                farm.sheet(on("2027-04-30T09:00"))
                        .all(TaskKind.TAKE_OFF)
                        .getFirst()
                        .where());
    }

    // What follows.

    private static Farmhouse hatched() {
        var farm = pheasants();
        farm.note(on("2027-04-26T18:00"), transfer(HATCHER, "14", 9, 10));
        farm.note(on("2027-04-30T09:00"), pull("14", Pull.LAST, 88));
        return farm;
    }

    @Test
    void whatIsLeft_isOpenedWithinTwoDays_andLetGo() {
        var farm = hatched();
        var task = farm.sheet(on("2027-04-30T10:00")).all(TaskKind.BREAK_OUT).getFirst();
        assertEquals(new Work.OfSet(set("14"), 25, List.of(Species.PHEASANT), 16), task.work());
        assertEquals(List.of(Place.BREAK_OUT, Place.HUMANE_KILLING, Place.ROTTEN_EGGS), task.cautions());
        assertEquals(Urgency.NOW, standing(farm.sheet(on("2027-05-02T10:00")), TaskKind.BREAK_OUT));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-05-03T10:00")), TaskKind.BREAK_OUT));

        farm.note(
                on("2027-04-30T11:00"),
                new BrokenOut(Scope.ofSet(set("14")), 16, 0, List.of(new ClassCount(BreakOutClass.LATE_DEAD, 16))));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-04-30T12:00")), TaskKind.BREAK_OUT));
    }

    @Test
    void theHatcher_isCleanedAfterTheTakeOff_andOverdueTwoDaysLater() {
        var farm = hatched();
        assertEquals(Urgency.NOW, standing(farm.sheet(on("2027-04-30T10:00")), TaskKind.CLEAN_MACHINE));
        assertEquals(Urgency.NOW, standing(farm.sheet(on("2027-05-01T08:00")), TaskKind.CLEAN_MACHINE));
        var late = farm.sheet(on("2027-05-02T08:00")).overdue();
        assertEquals(List.of(TaskKind.CLEAN_MACHINE), kinds(late));
        assertEquals(Target.Form.of("machine-cleaned", HATCHER), late.getFirst().target());

        farm.note(on("2027-04-30T15:00"), new MachineCleaned(HATCHER, SHELF, "one shelf only"));
        assertEquals(Urgency.OVERDUE, standing(farm.sheet(on("2027-05-02T08:00")), TaskKind.CLEAN_MACHINE));
        farm.note(on("2027-04-30T16:00"), new MachineCleaned(HATCHER, null, "washed"));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-05-02T08:00")), TaskKind.CLEAN_MACHINE));
    }

    @Test
    void theHatcher_isWashedDryAndAtHeat_aDayBeforeTheTransfer() {
        var farm = pheasants();
        var eve = farm.sheet(on("2027-04-25T19:00"));
        var task = eve.all(TaskKind.PREPARE_HATCHER).getFirst();
        assertEquals(Urgency.NOW, task.urgency());
        assertEquals(new Work.OfMachine(List.of(HATCHER), List.of(set("14"))), task.work());

        farm.note(on("2027-04-24T10:00"), new MachineCleaned(HATCHER, null, "washed"));
        assertEquals(
                Urgency.NOW, standing(farm.sheet(on("2027-04-25T19:00")), TaskKind.PREPARE_HATCHER), "not yet warm");
        farm.note(on("2027-04-25T18:30"), bulbs(HATCHER));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-04-25T19:00")), TaskKind.PREPARE_HATCHER));
    }

    @Test
    void theHatcher_isPreparedOnce_betweenTheTakeOffAndTheNextTransfer() {
        var farm = pheasants();
        farm.note(on("2027-04-26T18:00"), transfer(HATCHER, "14", 9, 10));
        farm.note(on("2027-04-12T08:00"), setting("15", load(1, Species.PHEASANT, 54), load(2, Species.CHUKAR, 60)));
        // Taken off on 30 April; chukar goes over on 2 May, pheasant on the 3rd into the same hatcher.
        var coming = farm.sheet(on("2027-04-28T09:00")).all(TaskKind.PREPARE_HATCHER);
        assertEquals(
                List.of(LocalDate.of(2027, 5, 1)),
                coming.stream().map(t -> t.when().firstDay()).toList());
        assertEquals(Where.at(HATCHER), coming.getFirst().where());
    }

    @Test
    void theHatcher_isNotWashed_whileItHoldsEggsOfAnotherSet() {
        var farm = pheasants();
        farm.note(on("2027-04-26T18:00"), transfer(HATCHER, "14", 9, 10));
        farm.note(on("2027-04-07T08:00"), setting("15", load(1, Species.PHEASANT, 54)));
        assertEquals(List.of(), farm.sheet(on("2027-04-27T19:00")).all(TaskKind.PREPARE_HATCHER));
    }

    @Test
    void theHatch_isNowhere_beforeTheTransferSaysWhere() {
        assertEquals(
                List.of(Where.NOT_SAID),
                pheasants().sheet(on("2027-04-25T09:00")).all(TaskKind.EXPECT_PIPS).stream()
                        .map(t -> t.where())
                        .toList());
    }

    @Test
    void clears_areDisposedOf_byTheDayAfterTheLook() {
        var farm = pheasants();
        farm.note(on("2027-04-12T18:30"), look("14", 9, FindingCount.removed(Finding.CLEAR, 5)));
        farm.note(on("2027-04-12T18:40"), look("14", 10, FindingCount.left(Finding.CLEAR, 2)));
        var task = farm.sheet(on("2027-04-12T19:00")).all(TaskKind.DISPOSE).getFirst();
        assertEquals(new Work.OfSet(set("14"), 7, List.of(Species.PHEASANT), 5), task.work());
        assertEquals(List.of(Reason.Custom.of(Practice.DISPOSE_AFTER_THE_LOOK)), task.reasons());
        assertEquals(Urgency.NOW, standing(farm.sheet(on("2027-04-13T07:00")), TaskKind.DISPOSE));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-04-14T07:00")), TaskKind.DISPOSE));
    }

    @Test
    void eggsKeptToOpen_waitForTheBench_untilTheyAreNamed() {
        var farm = pheasants();
        var look = farm.note(on("2027-04-12T18:30"), look("14", 9, new FindingCount(Finding.CLEAR, 5, 1, 4)));
        var task = farm.sheet(on("2027-04-12T19:00")).all(TaskKind.BREAK_OUT).getFirst();
        assertEquals(4, ((Work.OfSet) task.work()).eggs());
        farm.note(
                on("2027-04-12T20:00"),
                new BrokenOut(
                        Scope.ofLoad(set("14"), tray(9)).withLook(look),
                        4,
                        4,
                        List.of(new ClassCount(BreakOutClass.INFERTILE, 4))));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-04-12T21:00")), TaskKind.BREAK_OUT));
    }

    @Test
    void theSheet_isEmpty_beforeTheSeason() {
        var sheet = Farmhouse.usual().sheet(on("2027-03-05T09:00"));
        assertEquals(List.of(), sheet.overdue());
        assertEquals(List.of(), sheet.due());
        assertEquals(List.of(), sheet.coming());
    }

    @Test
    void coming_isOfTheNextSevenDays_dayByDay() {
        var days = pheasants().sheet(on("2027-04-25T09:00")).comingByDay();
        assertEquals(LocalDate.of(2027, 4, 26), days.firstKey());
        assertFalse(days.lastKey().isAfter(LocalDate.of(2027, 5, 2)));
        assertEquals(List.of(TaskKind.TRANSFER), kinds(days.getOrDefault(LocalDate.of(2027, 4, 26), List.of())));
    }

    @ParameterizedTest
    @EnumSource(TaskKind.class)
    void everyCaution_hasItsWords(TaskKind kind) {
        for (var place : kind.cautions()) {
            assertFalse(Cautions.at(place).text().isBlank());
        }
    }
}
