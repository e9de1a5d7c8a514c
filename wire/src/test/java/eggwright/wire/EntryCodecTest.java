package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.entry.UnknownPayload;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.testkit.walls.Walls;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class EntryCodecTest {
    private static final String LOOK = """
            {"id":"01976b2e-7c00-7000-8000-000000000001","farm":"Fallow End","kind":"%s",\
            "happened":"2027-04-13T19:00-05:00","noted":"2027-04-13T19:01-05:00","who":"Wren","device":"desk",\
            "origin":"noted","payload_version":%d,"payload":%s}""";

    @Test
    void everyEntryOfASeason_comesBackAsItWas() {
        var kinds = new TreeSet<String>();
        for (var kept : Season.of(Truth.PLAIN, 7, LocalDate.of(2027, 3, 22)).entries()) {
            var written = EntryCodec.write(kept.entry());
            var read = assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(written), written);
            assertEquals(kept.entry(), read.entry());
            assertEquals(written, EntryCodec.write(read.entry()));
            kinds.add(kept.entry().payload().kindWord());
        }
        assertTrue(kinds.size() > 15, kinds.toString());
    }

    @Test
    void look_ofTheFirstVersion_isReadUpwards() {
        var json = LOOK.formatted(
                "looked", 1, "{\"scope\":{\"set\":\"14\",\"tray\":\"7\"},\"removed\":{\"clear\":5,\"dead\":1}}");
        var read = assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(json));
        var look = assertInstanceOf(Looked.class, read.entry().payload());
        assertEquals(
                List.of(FindingCount.removed(Finding.CLEAR, 5), FindingCount.removed(Finding.DEAD, 1)),
                look.findings());
    }

    @Test
    void unknownKind_isCarriedAlong() {
        var json = LOOK.formatted("moon-seen", 3, "{\"phase\":\"full\",\"n\":[1,2]}");
        var read = assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(json));
        assertEquals(
                new UnknownPayload("moon-seen", "{\"phase\":\"full\",\"n\":[1,2]}"),
                read.entry().payload());
        assertEquals(json, EntryCodec.write(read.entry()));
    }

    @Test
    void malformed_namesTheField() {
        var json = LOOK.formatted("eggs-counted", 1, "{\"pen\":\"4\",\"species\":\"pheasant\",\"eggs\":\"many\"}");
        var read = assertInstanceOf(ReadEntry.Malformed.class, EntryCodec.read(json));
        assertEquals("Field eggs is \"many\"; it should be a whole number.", read.reason());
        assertInstanceOf(ReadEntry.Malformed.class, EntryCodec.read("eggs"));
        assertInstanceOf(ReadEntry.Malformed.class, EntryCodec.read("{}"));
        var species = LOOK.formatted("eggs-counted", 1, "{\"species\":\"phesant\",\"eggs\":4}");
        var wrong = assertInstanceOf(ReadEntry.Malformed.class, EntryCodec.read(species));
        assertTrue(wrong.reason().contains("Did you mean pheasant?"), wrong.reason());
    }

    @Test
    void wire_keepsToItsWalls() {
        Walls.ofRoom("eggwright.wire").hold();
    }
}
