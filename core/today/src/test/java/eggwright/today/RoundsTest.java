package eggwright.today;

import static eggwright.today.Farmhouse.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.entry.MachineUse;
import eggwright.book.entry.MachineUseChanged;
import eggwright.book.entry.RoundCheck;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Urgency;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import eggwright.trade.Species;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rounds at 7 and 19 (common practice, no source). Set 14 went in on Monday 5 April 2027. */
class RoundsTest {
    private static Farmhouse farm() {
        var farm = Farmhouse.usual();
        farm.note(on("2027-04-05T08:00"), setting("14", load(9, Species.PHEASANT, 54)));
        return farm;
    }

    private static List<String> hours(DaySheet sheet) {
        return sheet.all(TaskKind.DAILY_ROUND).stream()
                .map(Task::when)
                .map(w -> w.from().toLocalDateTime().toString())
                .sorted()
                .toList();
    }

    @Test
    void rounds_areTwoADay_atTheMachineThatHoldsEggs() {
        var sheet = farm().sheet(on("2027-04-08T06:00"));
        assertEquals(List.of("2027-04-08T07:00", "2027-04-08T19:00"), hours(sheet));
        var task = sheet.all(TaskKind.DAILY_ROUND).getFirst();
        assertEquals(Where.at(SETTER), task.where());
        assertEquals(
                new Work.OfRound(
                        List.of(RoundCheck.WATER_FILLED, RoundCheck.TURNER_TILTED, RoundCheck.VENTS_OPEN),
                        List.of(set("14"))),
                task.work());
        assertEquals(Urgency.LATER_TODAY, task.urgency());
    }

    @Test
    void aReading_countsForTheNearestRound() {
        var farm = farm();
        farm.note(on("2027-04-08T09:30"), bulbs(SETTER));
        assertEquals(List.of("2027-04-08T19:00"), hours(farm.sheet(on("2027-04-08T10:00"))));
        farm.note(on("2027-04-08T17:00"), bulbs(SETTER));
        assertEquals(List.of(), hours(farm.sheet(on("2027-04-08T18:00"))));
    }

    @Test
    void aRoundNotMade_isOver_whenTheNextIsNearer() {
        assertEquals(List.of("2027-04-08T07:00", "2027-04-08T19:00"), hours(farm().sheet(on("2027-04-08T12:59"))));
        var afternoon = farm().sheet(on("2027-04-08T13:00"));
        assertEquals(List.of("2027-04-08T19:00"), hours(afternoon));
        assertEquals(List.of(), afternoon.overdue());
        assertEquals(
                List.of("2027-04-08T19:00", "2027-04-09T07:00", "2027-04-09T19:00"),
                hours(farm().sheet(on("2027-04-09T00:30"))));
    }

    @Test
    void aHatcher_isAskedForNoTurner() {
        var farm = farm();
        farm.note(on("2027-04-26T18:00"), transfer(HATCHER, "14", 9));
        var task = farm.sheet(on("2027-04-27T06:00")).all(TaskKind.DAILY_ROUND).getFirst();
        assertEquals(Where.at(HATCHER), task.where());
        assertEquals(List.of(RoundCheck.WATER_FILLED, RoundCheck.VENTS_OPEN), ((Work.OfRound) task.work()).checks());
    }

    @Test
    void aMachineOutOfUse_isAskedForNoRound() {
        var farm = farm();
        farm.note(on("2027-04-07T18:00"), new MachineUseChanged(SETTER, MachineUse.OUT_OF_USE, "fan"));
        assertEquals(List.of(), hours(farm.sheet(on("2027-04-08T06:00"))));
    }

    @Test
    void eggsWhosePlaceWasNotNoted_areRoundedWhereTheyCanStand() {
        var farm = Farmhouse.usual();
        farm.note(on("2027-04-05T08:00"), setting("14", load(9, null, Species.PHEASANT, 54)));
        var task = farm.sheet(on("2027-04-08T06:00")).all(TaskKind.DAILY_ROUND).getFirst();
        assertEquals(Where.at(SETTER), task.where());
    }
}
