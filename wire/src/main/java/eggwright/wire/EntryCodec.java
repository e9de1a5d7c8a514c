package eggwright.wire;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import eggwright.book.entry.Entry;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.entry.UnknownPayload;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import eggwright.units.OutOfRange;
import java.io.IOException;
import java.time.OffsetDateTime;

/** Entries as one line of JSON, fields in a fixed order; see {@code docs/formats/book-json-lines.md}. */
public final class EntryCodec {
    private EntryCodec() {}

    /** The version in which a payload is written; at least 1. */
    public static int version(Payload payload) {
        return Upcasts.current(payload.kindWord());
    }

    /**
     * The canonical text of an entry: one line, fixed order. A payload of a kind that this program knows is written, and
     * labelled, in the version of today, whichever it came in.
     */
    public static String write(Entry entry) {
        return Tree.text(out -> write(out, entry));
    }

    private static void write(JsonGenerator out, Entry entry) throws IOException {
        out.writeStartObject();
        out.writeStringField("id", entry.id().toString());
        out.writeStringField("farm", entry.farm().text());
        out.writeStringField("kind", entry.payload().kindWord());
        out.writeStringField("happened", entry.happened().toString());
        out.writeStringField("noted", entry.noted().toString());
        out.writeStringField("who", entry.who().text());
        out.writeStringField("device", entry.device().text());
        out.writeStringField("origin", Words.of(entry.origin()));
        out.writeNumberField(
                "payload_version",
                entry.payload() instanceof UnknownPayload ? entry.payloadVersion() : version(entry.payload()));
        out.writeFieldName("payload");
        PayloadWriter.payload(out, entry.payload());
        out.writeEndObject();
    }

    /** The canonical text of a payload, for digests. */
    static String written(Payload payload) {
        return Tree.text(out -> PayloadWriter.payload(out, payload));
    }

    /** Reads an entry of any version. Keys that this program does not know are passed over. */
    public static ReadEntry read(String json) {
        try {
            return Tree.read(json) instanceof ObjectNode object
                    ? new ReadEntry.Whole(entry(object))
                    : new ReadEntry.Malformed("This line is not an entry. An entry is a JSON object.");
        } catch (OutOfRange | Misread refused) {
            return new ReadEntry.Malformed(String.valueOf(refused.getMessage()));
        }
    }

    private static Entry entry(ObjectNode node) {
        var version = node.path("payload_version");
        if (!version.isInt() || version.intValue() < 1) {
            throw new Misread("payload_version", version, "a whole number from 1");
        }
        return new Entry(
                EntryId.parse(text(node, "id")),
                new FarmId(text(node, "farm")),
                instant(node, "happened"),
                instant(node, "noted"),
                new PersonName(text(node, "who")),
                new DeviceName(text(node, "device")),
                (Origin) TextForms.read(Origin.class, textNode(node, "origin"), FieldPath.of("origin")),
                PayloadReader.payload(text(node, "kind"), version.intValue(), node.path("payload"), FieldPath.TOP),
                version.intValue());
    }

    private static String text(ObjectNode node, String field) {
        return textNode(node, field).textValue();
    }

    private static JsonNode textNode(ObjectNode node, String field) {
        var found = node.path(field);
        if (!found.isTextual()) {
            throw new Misread(field, found, "text");
        }
        return found;
    }

    private static OffsetDateTime instant(ObjectNode node, String field) {
        return (OffsetDateTime) TextForms.read(OffsetDateTime.class, textNode(node, field), FieldPath.of(field));
    }
}
