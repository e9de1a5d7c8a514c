package eggwright.today;

import static eggwright.today.Farmhouse.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.entry.EggsSet;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.Lot;
import eggwright.book.name.SectionName;
import eggwright.invented.DemoSeason;
import eggwright.today.task.Bundle;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Where;
import eggwright.trade.Species;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Set 14: trays on two shelves of one setter, from Monday 5 April 2027. */
class BundleTest {
    private static LoadSet onShelf(String shelf, int tray) {
        return new LoadSet(
                tray(tray),
                SETTER,
                new SectionName(shelf),
                null,
                List.of(Lot.of(null, Species.PHEASANT, null, null, 50)));
    }

    private static Farmhouse farm() {
        var farm = Farmhouse.usual();
        farm.note(
                on("2027-04-05T08:00"),
                new EggsSet(set("14"), List.of(onShelf("1", 7), onShelf("1", 8), onShelf("2", 9))));
        return farm;
    }

    private static Bundle only(TaskKind kind, List<Task> tasks) {
        var found = Bundle.of(tasks).stream().filter(b -> b.kind() == kind).toList();
        assertEquals(1, found.size(), found.toString());
        return found.getFirst();
    }

    @Test
    void candlingOfASet_isOneThingToDo_whereverItsTraysStand() {
        var candle = only(TaskKind.CANDLE, farm().sheet(on("2027-04-12T09:00")).due());
        assertEquals(3, candle.trays().size());
        assertEquals(
                List.of(new Where(SETTER, new SectionName("1")), new Where(SETTER, new SectionName("2"))),
                candle.places());
        assertEquals(List.of(SETTER), candle.machines());
        // Tray 9 stands alone on its shelf; the work on the whole set still leads to no single tray.
        assertEquals(Target.Form.of("looked", set("14")), candle.target());
    }

    @Test
    void roundsOfOneHour_areMadeInOneGo_andThoseOfAnotherAreNot() {
        var farm = farm();
        farm.note(on("2027-04-05T08:10"), setting("15", load(20, HATCHER, Species.PHEASANT, 30)));
        var rounds = Bundle.of(farm.sheet(on("2027-04-08T06:00")).due()).stream()
                .filter(b -> b.kind() == TaskKind.DAILY_ROUND)
                .toList();
        assertEquals(2, rounds.size());
        for (var round : rounds) {
            assertEquals(
                    List.of(SETTER, HATCHER).stream().sorted().toList(),
                    round.machines().stream().sorted().toList());
            assertEquals(Target.Form.of("climate-noted"), round.target());
        }
    }

    @Test
    void workOnOneMachine_leadsToThatMachine() {
        var round = Bundle.of(farm().sheet(on("2027-04-08T06:00")).due()).getFirst();
        assertEquals(Target.Form.of("climate-noted", SETTER), round.target());
    }

    /** On a whole invented season: nothing is lost, nothing stands twice, the order stays. */
    @Test
    void bundles_holdEveryTaskOnce_inTheOrderOfTheirFirst() {
        var now = Instant.parse("2027-05-12T17:00:00Z");
        var picture = eggwright.book.fold.Ledger.of(DemoSeason.of(now, CHICAGO).entries())
                .picture();
        var sheet = DaySheet.of(picture, now.atZone(CHICAGO));
        for (var tasks : List.of(sheet.overdue(), sheet.due(), sheet.coming())) {
            var bundles = Bundle.of(tasks);
            var inside = bundles.stream().flatMap(b -> b.tasks().stream()).toList();
            assertEquals(tasks.size(), inside.size());
            assertEquals(java.util.Set.copyOf(tasks), java.util.Set.copyOf(inside));
            var firsts = bundles.stream().map(b -> tasks.indexOf(b.first())).toList();
            assertEquals(firsts.stream().sorted().toList(), firsts);
        }
    }
}
