package eggwright.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.UnknownPayload;
import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EntryCodecTest {
    private static final String LOOK = """
            {"id":"01976b2e-7c00-7000-8000-000000000001","farm":"Fallow End","kind":"%s",\
            "happened":"2027-04-13T19:00-05:00","noted":"2027-04-13T19:01-05:00","who":"Wren","device":"desk",\
            "origin":"noted","payload_version":%d,"payload":%s}""";

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
    void incidentOverInAYearThatNoBookHolds_isMalformed() {
        var incident = "{\"what\":\"power_cut\",\"until\":\"%s\",\"text\":\"Storm\"}";
        var read = EntryCodec.read(LOOK.formatted("incident", 1, incident.formatted("+10000-04-13T19:00-05:00")));
        var refused = assertInstanceOf(ReadEntry.Malformed.class, read);
        assertTrue(refused.reason().contains("years run from 1900 to 2099"), refused.reason());
        var whole = EntryCodec.read(LOOK.formatted("incident", 1, incident.formatted("2027-04-13T19:00-05:00")));
        assertInstanceOf(ReadEntry.Whole.class, whole);
    }

    @Test
    void newerVersion_ofAKnownKind_isCarriedAlong() {
        var json = LOOK.formatted("looked", 9, "{\"scope\":7,\"weight\":1.50,\"big\":123456789012345678901234567890}");
        var read = assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(json));
        assertInstanceOf(UnknownPayload.class, read.entry().payload());
        assertEquals("looked", read.entry().payload().kindWord());
        assertEquals(json, EntryCodec.write(read.entry()));
    }

    @Test
    void unknownFields_arePassedOver() {
        var json = LOOK.formatted("eggs-counted", 1, "{\"species\":\"pheasant\",\"eggs\":4,\"mood\":\"good\"}")
                .replace("\"who\"", "\"weather\":{\"rain\":true},\"who\"");
        assertInstanceOf(ReadEntry.Whole.class, EntryCodec.read(json));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"eggs\":4 | \"eggs\":4.5 | Field eggs is 4.5; it should be a whole number.",
                "\"eggs\":4 | \"eggs\":-1 | Eggs is -1; it is a whole number from 0 to 1000000.",
                "\"eggs\":4 | \"egg\":4 | Field eggs is missing.",
                "\"eggs\":4 | \"eggs\":4,\"eggs\":5 | Field eggs is written twice. Write each field once.",
                "\"desk\" | 7 | Field device is 7; it should be text.",
                "\"noted\",\"payload | \"guessed\",\"payload | Field origin is \"guessed\"; it should be one of noted, imported.",
                "\"payload_version\":1 | \"payload_version\":0 | Field payload_version is 0; it should be a whole number from 1.",
                "-05:00\",\"noted | \",\"noted | Field happened is \"2027-04-13T19:00\"; it should be an instant with its offset, such as 2027-04-05T08:00-05:00.",
                "}} | }}} | This line is not JSON (see column 265). An entry is a JSON object on one line.",
                "}} | }} {} | This line goes on after the JSON object. Write one entry a line.",
                "\"Wren\" | \"\\ud83e\" | This line holds half a character (character 1 of a text). Write the text again.",
            })
    void malformed_saysWhatWouldBeRight(String right, String wrong, String reason) {
        var json = LOOK.formatted("eggs-counted", 1, "{\"species\":\"pheasant\",\"eggs\":4}");
        assertTrue(json.contains(right), json);
        assertEquals(new ReadEntry.Malformed(reason), EntryCodec.read(json.replace(right, wrong)));
    }

    @Test
    void malformed_namesThePathInside() {
        var json = LOOK.formatted(
                "looked",
                2,
                "{\"scope\":{\"set\":\"14\"},\"findings\":[{\"finding\":\"blank\",\"seen\":1,\"removed\":0,\"kept_to_open\":0}],\"removed_unsorted\":0}");
        assertEquals(
                new ReadEntry.Malformed(
                        "Field findings[0].finding is \"blank\"; it should be one of clear, blood_ring, "
                                + "dead, live, doubtful, cracked, rot, wrong_end_up."),
                EntryCodec.read(json));
    }

    @Test
    void payloadThatIsNoObject_isMalformed_evenOfAnUnknownKind() {
        assertEquals(
                new ReadEntry.Malformed("Field payload is [1]; it should be an object."),
                EntryCodec.read(LOOK.formatted("moon-seen", 1, "[1]")));
    }

    @Test
    void wire_keepsToItsWalls() {
        Walls.ofRoom("eggwright.wire").hold();
    }
}
