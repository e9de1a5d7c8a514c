package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import eggwright.book.entry.EggsCounted;
import eggwright.book.name.FarmId;
import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.trade.Species;
import org.junit.jupiter.api.Test;

class DerivedIdsTest {
    private static final FarmId FARM = new FarmId("farm-3f2a91c0");
    private static final SetName SET = new SetName("14");
    private static final EggsCounted ROW = new EggsCounted(new PenName("4"), Species.PHEASANT, 54);

    @Test
    void sameRow_givesTheSameId_inEveryVersionOfTheProgram() {
        assertEquals(
                "991b20c1-1a8f-8ff2-a6b2-a008fa1ba3cc",
                DerivedIds.of(FARM, SET, new TrayName("7"), ROW).toString());
        assertEquals(8, DerivedIds.of(FARM, SET, new TrayName("7"), ROW).value().version());
    }

    @Test
    void anotherTrayOrCount_givesAnotherId() {
        var id = DerivedIds.of(FARM, SET, new TrayName("7"), ROW);
        assertNotEquals(id, DerivedIds.of(FARM, SET, new TrayName("8"), ROW));
        assertNotEquals(
                id,
                DerivedIds.of(FARM, SET, new TrayName("7"), new EggsCounted(new PenName("4"), Species.PHEASANT, 55)));
    }
}
