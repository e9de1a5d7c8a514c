package eggwright.desk.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class FormTest {
    private static final Form BLANK = Form.of(
            "/notes/set",
            "made-now",
            "Keep this set",
            Field.Line.whole("eggs", "Eggs", "eggs").withValue("54"),
            Field.Rows.of(
                    "tray",
                    "Trays",
                    "Tray",
                    "More trays",
                    2,
                    List.of(Field.Line.text("name", "Number"), Field.Line.whole("eggs", "Eggs", "eggs"))));

    @Test
    void form_showsWhatWasTyped_evenWhereItWasEmptied() {
        var filled = BLANK.filledFrom(Typed.of(Map.of("eggs", "")));

        assertEquals("", ((Field.Line) filled.fields().getFirst()).value());
    }

    @Test
    void form_keepsItsUsualValue_whereTheFieldWasNotSent() {
        var filled = BLANK.filledFrom(Typed.nothing());

        assertEquals(BLANK, filled);
    }

    @Test
    void form_keepsTheEntryIdThatWasSent_soThatSendingTwiceIsHarmless() {
        assertEquals(
                "made-before",
                BLANK.filledFrom(Typed.of(Map.of("entry_id", "made-before"))).entryId());
    }

    @Test
    void form_growsToTheRowsThatWereSent() {
        var rows = rowsOf(BLANK.filledFrom(Typed.of(Map.of("tray.3.eggs", "62"))));

        assertEquals(4, rows.rows().size());
        assertEquals("62", ((Field.Line) rows.rows().get(3).get(1)).value());
        assertEquals("f-tray-3-eggs", rows.rows().get(3).get(1).id());
    }

    @Test
    void form_addsRows_whenAskedForMore() {
        var typed = Typed.of(Map.of("more", "tray", "tray.1.name", "7"));
        var rows = rowsOf(BLANK.filledFrom(typed));

        assertTrue(Form.isToBeShownAgain(typed));
        assertEquals(7, rows.rows().size());
        assertEquals("7", ((Field.Line) rows.rows().get(1).get(0)).value());
    }

    @Test
    void form_saysEachMessage_besideItsFieldAndAtTheTop() {
        var mended = BLANK.toMend(List.of(
                new Form.ToMend("", "Nothing adds up."),
                new Form.ToMend("tray.1.eggs", "Tray 7 holds 54."),
                new Form.ToMend("tray.1.eggs", "Say which were left out.")));

        assertTrue(mended.isToBeMended());
        assertEquals(3, mended.top().size());
        var eggs = rowsOf(mended).rows().get(1).get(1);
        assertEquals("Tray 7 holds 54. Say which were left out.", eggs.message());
        assertEquals("f-tray-1-eggs-message", eggs.describedBy());
        assertEquals("#f-tray-1-eggs", mended.top().get(1).anchor());
        assertFalse(mended.fields().getFirst().isToBeMended());
    }

    @Test
    void typed_givesOnlyTheRows_thatHoldSomething() {
        var typed = Typed.of(Map.of(
                "tray.0.name", "7", "tray.0.eggs", "54", "tray.1.name", " ", "tray.1.eggs", "", "tray.2.name", "11"));

        assertEquals(List.of(new Typed.Row(0, "tray.0"), new Typed.Row(2, "tray.2")), typed.filledRows("tray"));
        assertEquals("tray.2.eggs", typed.filledRows("tray").get(1).field("eggs"));
    }

    @Test
    void typed_neverGrowsWithoutBound() {
        assertEquals(0, Typed.of(Map.of("tray.99999999.eggs", "1")).rowCount("tray"));
        assertEquals(5000, Typed.of(Map.of("tray.9999.eggs", "1")).rowCount("tray"));
        assertEquals(
                0, Typed.of(Map.of("tray.x.eggs", "1", "trays.4.eggs", "1")).rowCount("tray"));
    }

    @Test
    void typed_saysWhereThereAreMoreRows_thanOneNoteHolds() {
        assertFalse(Typed.of(Map.of("tray.499.eggs", "1")).holdsTooManyRows("tray"));
        assertFalse(Typed.of(Map.of("tray.500.eggs", " ")).holdsTooManyRows("tray"));
        assertTrue(Typed.of(Map.of("tray.500.eggs", "1")).holdsTooManyRows("tray"));
        assertTrue(Typed.of(Map.of("tray.99999999.eggs", "1")).holdsTooManyRows("tray"));
        assertFalse(Typed.of(Map.of("trays.500.eggs", "1")).holdsTooManyRows("tray"));
    }

    private static Field.Rows rowsOf(Form form) {
        return (Field.Rows) form.fields().get(1);
    }
}
