package eggwright.forecast.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Entry;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Kept;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Lot;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.TransferOf;
import eggwright.book.entry.Transferred;
import eggwright.book.fold.Ledger;
import eggwright.book.name.BasketName;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.name.PersonName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.trade.Species;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PassagesTest {
    private static final OffsetDateTime MONDAY = OffsetDateTime.of(2027, 4, 5, 8, 0, 0, 0, ZoneOffset.ofHours(-5));
    private static final SetName SET = new SetName("27-1");

    private final List<Kept> entries = new ArrayList<>();

    private void note(int day, Payload payload) {
        var at = MONDAY.plusDays(day);
        var id = EntryId.of(at.toInstant().toEpochMilli(), 0, entries.size() + 1);
        entries.add(new Kept(
                new Entry(
                        id,
                        new FarmId("Fallow End"),
                        at,
                        at,
                        new PersonName("Wren"),
                        new DeviceName("desk"),
                        Origin.NOTED,
                        payload,
                        1),
                at.toInstant(),
                Duration.ZERO));
    }

    private Passage passage() {
        return Passages.of(Ledger.of(entries).picture()).getFirst();
    }

    private static LoadSet tray(int number, Species species, int eggs) {
        var lot = Lot.of(new PenName("Orchard"), species, LocalDate.of(2027, 3, 29), LocalDate.of(2027, 4, 4), eggs);
        return new LoadSet(named(number), new MachineName("Setter"), new SectionName("1"), null, List.of(lot));
    }

    private static TrayName named(int number) {
        return new TrayName(Integer.toString(number));
    }

    private static Looked look(int tray, int live, int clear) {
        return new Looked(
                Scope.ofLoad(SET, named(tray)),
                null,
                null,
                List.of(FindingCount.left(Finding.LIVE, live), FindingCount.removed(Finding.CLEAR, clear)),
                0,
                null);
    }

    @Test
    void trayFilledOnlyByPooling_waitsWithItsEggs() {
        note(0, new EggsSet(SET, List.of(tray(1, Species.PHEASANT, 54), tray(2, Species.PHEASANT, 54))));
        note(8, look(1, 20, 34));
        note(8, look(2, 18, 36));
        for (int from = 1; from <= 2; from++) {
            note(9, new EggsMoved(SET, named(from), null, null, SET, named(9), new MachineName("Setter"), null));
        }
        var waiting = passage().waiting(Species.PHEASANT);
        assertEquals(38, waiting.stream().mapToInt(Passage.Waiting::eggs).sum());
        assertEquals(2, passage().stage(StageKind.SET_TO_FIRST_LOOK).size());
    }

    @Test
    void speciesOfOneSet_areKeptApart() {
        note(0, new EggsSet(SET, List.of(tray(1, Species.PHEASANT, 54), tray(2, Species.CHUKAR, 40))));
        note(8, look(1, 48, 6));
        note(8, look(2, 30, 10));
        var passage = passage();
        assertEquals(Species.PHEASANT, passage.species());
        assertEquals(48, passage.waiting(Species.PHEASANT).getFirst().eggs());
        assertEquals(30, passage.waiting(Species.CHUKAR).getFirst().eggs());
        assertEquals(
                30,
                passage.stage(StageKind.SET_TO_FIRST_LOOK, Species.CHUKAR)
                        .getFirst()
                        .through());
    }

    /** Two trays share the red basket, the third has the blue one: two counts, of two trays and of one. */
    @Test
    void traysOfOneBasket_areOneCount() {
        note(
                0,
                new EggsSet(
                        SET,
                        List.of(
                                tray(1, Species.PHEASANT, 54),
                                tray(2, Species.PHEASANT, 54),
                                tray(3, Species.PHEASANT, 54))));
        var red = new BasketName("red 1");
        var blue = new BasketName("blue 1");
        note(
                21,
                new Transferred(
                        new MachineName("Hatcher"),
                        List.of(
                                new TransferOf(SET, named(1), null, red),
                                new TransferOf(SET, named(2), null, red),
                                new TransferOf(SET, named(3), null, blue))));
        note(25, new TakenOff(Scope.ofBasket(red), Pull.LAST, 80, 0, 0, 0));
        note(25, new TakenOff(Scope.ofBasket(blue), Pull.LAST, 41, 0, 0, 0));
        var counts = passage().stage(StageKind.SET_TO_CHICK);
        assertEquals(
                List.of(List.of(108, 80, 2), List.of(54, 41, 1)),
                counts.stream()
                        .map(c -> List.of(c.of(), c.through(), c.trays()))
                        .toList());
        assertEquals(Map.of(new PenName("Orchard"), 1.0), counts.getFirst().pens());
    }
}
