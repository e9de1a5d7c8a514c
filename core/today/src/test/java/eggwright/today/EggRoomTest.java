package eggwright.today;

import static eggwright.today.Farmhouse.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import eggwright.book.entry.EggsReceived;
import eggwright.book.entry.PenChange;
import eggwright.book.entry.PenChanged;
import eggwright.book.entry.PenOpened;
import eggwright.book.entry.ReceivedFor;
import eggwright.book.name.PenName;
import eggwright.today.eggroom.EggRoomSheet;
import eggwright.today.eggroom.Sires;
import eggwright.today.eggroom.Storage;
import eggwright.today.task.Habit;
import eggwright.today.task.Reason;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Urgency;
import eggwright.today.task.Work;
import eggwright.trade.Species;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pheasant eggs keep well for 7 days (HUNGSTORE, seen) and fall markedly beyond 14 (WOODARD, seen). */
class EggRoomTest {
    private static final LocalDate LAID = LocalDate.of(2027, 4, 1);

    private static Farmhouse eggs() {
        var farm = Farmhouse.usual();
        farm.note(LAID.atTime(17, 0), gathered("4", Species.PHEASANT, LAID, 30));
        return farm;
    }

    private static EggRoomSheet room(Farmhouse farm, LocalDate on) {
        return EggRoomSheet.of(farm.picture(), farm.at(on.atTime(9, 0)));
    }

    @ParameterizedTest
    @CsvSource({
        "0,WITHIN",
        "5,WITHIN",
        "6,NEAR_ADVISED",
        "7,NEAR_ADVISED",
        "8,OVER_ADVISED",
        "12,OVER_ADVISED",
        "13,NEAR_LIMIT",
        "14,NEAR_LIMIT",
        "15,OVER_LIMIT"
    })
    void storage_standsToTheAdvice_byTheAgeInDays(int days, Storage storage) {
        var lot = room(eggs(), LAID.plusDays(days)).setFirst().getFirst();
        assertEquals(days, lot.oldestDays());
        assertEquals(storage, lot.storage());
    }

    @Test
    void chukarEggs_keepTwiceAsLong() {
        // 14 days without loss (DEU2024, seen), little harmed to 28 (WOODARD, seen).
        var farm = Farmhouse.usual();
        farm.note(LAID.atTime(17, 0), gathered("9", Species.CHUKAR, LAID, 20));
        assertEquals(
                Storage.NEAR_ADVISED,
                room(farm, LAID.plusDays(14)).setFirst().getFirst().storage());
    }

    @Test
    void theOldestWithinTheAdvice_areSetFirst_thenThoseOfUnknownAge_thenTheFreshestPastIt() {
        var farm = Farmhouse.usual();
        for (int daysBefore : new int[] {2, 20, 9, 6, 11}) {
            var laid = LAID.minusDays(daysBefore);
            farm.note(laid.atTime(17, 0), gathered("4", Species.PHEASANT, laid, 10 + daysBefore));
        }
        farm.note(
                LAID.atTime(8, 0),
                new EggsReceived(
                        new PenName("Bought"), Species.PHEASANT, null, null, 40, ReceivedFor.BOUGHT_IN, "a neighbour"));
        assertEquals(
                List.of(16, 12, 40, 19, 21, 30),
                room(farm, LAID).setFirst().stream().map(l -> l.eggs()).toList());
        assertNull(room(farm, LAID).setFirst().get(2).oldestDays());
        assertEquals(
                List.of("4", "Bought"),
                room(farm, LAID).pens().stream()
                        .map(p -> String.valueOf(p.key().pen()))
                        .toList());
    }

    @Test
    void eggs_areOfMixedSires_forThreeWeeksAfterAChangeOfCocks() {
        var farm = eggs();
        farm.note(on("2027-03-01T10:00"), new PenOpened(new PenName("4"), Species.PHEASANT, 2, 14, ""));
        assertEquals(Sires.OF_THE_PEN, room(farm, LAID).setFirst().getFirst().sires());
        farm.note(
                LAID.minusDays(20).atTime(10, 0),
                new PenChanged(new PenName("4"), PenChange.COCKS_EXCHANGED, 2, 0, "one was lame"));
        assertEquals(Sires.MIXED, room(farm, LAID).setFirst().getFirst().sires());
    }

    @Test
    void setting_isDueOnTheFarmsWeekday_andEggsAreWarmedFromTheEveningBefore() {
        var farm = eggs();
        farm.note(on("2027-03-02T08:00"), habits(DayOfWeek.MONDAY, null));
        var sunday = farm.sheet(on("2027-04-04T19:00"));
        assertEquals(Urgency.NOW, standing(sunday, TaskKind.WARM_EGGS));
        assertEquals(Urgency.COMING, standing(sunday, TaskKind.SET_EGGS));

        var task = farm.sheet(on("2027-04-05T07:00")).all(TaskKind.SET_EGGS).getFirst();
        assertEquals(
                "2027-04-05T08:00-05:00[America/Chicago]", task.when().from().toString());
        assertEquals(List.of(new Reason.FarmHabit(Habit.SET_WEEKDAY)), task.reasons());
        assertEquals(30, ((Work.OfEggs) task.work()).eggs());
        assertEquals(4, ((Work.OfEggs) task.work()).lots().getFirst().oldestDays());
    }

    @Test
    void setting_isDone_whenASetWentInToday() {
        var farm = eggs();
        farm.note(on("2027-03-02T08:00"), habits(DayOfWeek.MONDAY, null));
        farm.note(on("2027-04-05T08:00"), setting("1", load(1, Species.PHEASANT, 20)));
        var next = farm.sheet(on("2027-04-05T09:00")).all(TaskKind.SET_EGGS);
        assertEquals(
                List.of(LocalDate.of(2027, 4, 12)),
                next.stream().map(Task::when).map(w -> w.firstDay()).toList());
    }

    @Test
    void setting_isOverdue_onlyWhenEggsWaitBeyondTheAdvice() {
        var farm = eggs();
        farm.note(on("2027-03-02T08:00"), habits(DayOfWeek.MONDAY, null));
        assertEquals(List.of(), farm.sheet(on("2027-04-08T09:00")).overdue(), "a Monday was missed; day 7");
        var late = of(TaskKind.SET_EGGS, farm.sheet(on("2027-04-09T09:00")).overdue());
        assertEquals(LocalDate.of(2027, 4, 8), late.getFirst().when().firstDay());
        assertEquals(7.0, ((Reason.StorageAdvice) late.getFirst().reasons().getFirst()).days());
        assertEquals(List.of(), farm.sheet(on("2027-04-16T09:00")).overdue(), "past the limit of 14 days");
    }

    @Test
    void setting_isDueByTheAdvice_whereTheFarmHasNoWeekday() {
        var days = IntStream.rangeClosed(0, 8)
                .mapToObj(n -> standing(eggs().sheet(LAID.plusDays(n).atTime(7, 0)), TaskKind.SET_EGGS))
                .distinct()
                .toList();
        assertEquals(List.of(Urgency.COMING, Urgency.LATER_TODAY, Urgency.OVERDUE), days);
    }

    @Test
    void noEggs_noSetting() {
        var farm = Farmhouse.usual();
        farm.note(on("2027-03-02T08:00"), habits(DayOfWeek.MONDAY, null));
        assertEquals(List.of(), farm.sheet(on("2027-04-05T07:00")).all(TaskKind.SET_EGGS));
    }
}
