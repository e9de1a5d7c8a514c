package eggwright.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
import java.time.DateTimeException;
import java.time.OffsetDateTime;

/** Entries as one line of JSON, fields in a fixed order; see {@code docs/formats/book-json-lines.md}. */
public final class EntryCodec {
    private static final ObjectMapper JSON = new ObjectMapper();

    private EntryCodec() {}

    /** The version in which a payload is written. */
    public static int version(Payload payload) {
        return Upcasts.current(payload.kindWord());
    }

    public static String write(Entry entry) {
        var node = JSON.createObjectNode();
        node.put("id", entry.id().toString());
        node.put("farm", entry.farm().text());
        node.put("kind", entry.payload().kindWord());
        node.put("happened", entry.happened().toString());
        node.put("noted", entry.noted().toString());
        node.put("who", entry.who().text());
        node.put("device", entry.device().text());
        node.put("origin", Words.of(entry.origin()));
        node.put("payload_version", entry.payloadVersion());
        node.set("payload", payload(entry.payload()));
        return node.toString();
    }

    /** The canonical text of a payload, for digests. */
    static String written(Payload payload) {
        return payload(payload).toString();
    }

    private static JsonNode payload(Payload payload) {
        if (payload instanceof UnknownPayload unknown) {
            try {
                return JSON.readTree(unknown.written());
            } catch (JsonProcessingException broken) {
                throw new IllegalStateException("A payload kept as it came is not JSON", broken);
            }
        }
        return PayloadShape.object((Record) payload);
    }

    public static ReadEntry read(String json) {
        try {
            var node = JSON.readTree(json);
            return node instanceof ObjectNode object
                    ? new ReadEntry.Whole(entry(object))
                    : new ReadEntry.Malformed("This line is not an entry. An entry is a JSON object.");
        } catch (JsonProcessingException notJson) {
            return new ReadEntry.Malformed("This line is not JSON. An entry is a JSON object on one line.");
        } catch (OutOfRange | PayloadShape.Misread refused) {
            return new ReadEntry.Malformed(String.valueOf(refused.getMessage()));
        }
    }

    private static Entry entry(ObjectNode node) {
        int version = node.path("payload_version").asInt(1);
        var kind = text(node, "kind");
        var payload = node.path("payload");
        return new Entry(
                EntryId.parse(text(node, "id")),
                new FarmId(text(node, "farm")),
                instant(node, "happened"),
                instant(node, "noted"),
                new PersonName(text(node, "who")),
                new DeviceName(text(node, "device")),
                node.path("origin").asText("noted").equals("imported") ? Origin.IMPORTED : Origin.NOTED,
                PayloadShape.payload(kind, Upcasts.up(kind, version, payload)),
                version);
    }

    private static String text(ObjectNode node, String field) {
        var found = node.path(field);
        if (!found.isTextual()) {
            throw new PayloadShape.Misread(field, found, "text");
        }
        return found.textValue();
    }

    private static OffsetDateTime instant(ObjectNode node, String field) {
        try {
            return OffsetDateTime.parse(text(node, field));
        } catch (DateTimeException notAnInstant) {
            throw new PayloadShape.Misread(
                    field, node.path(field), "an instant with its offset, such as 2027-04-05T08:00-05:00");
        }
    }
}
