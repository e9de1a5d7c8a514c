package eggwright.wire;

import com.fasterxml.jackson.databind.JsonNode;
import eggwright.book.entry.Payload;
import eggwright.book.entry.PayloadKinds;
import eggwright.book.entry.UnknownPayload;
import eggwright.book.name.EntryId;
import eggwright.book.name.Name;
import eggwright.units.Altitude;
import eggwright.units.Amount;
import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.util.ArrayList;
import org.jspecify.annotations.Nullable;

/** Reads what {@link PayloadWriter} writes, and every older version of it. Unknown keys are passed over. */
final class PayloadReader {
    private PayloadReader() {}

    /**
     * Reads a payload. A kind that this version does not know, or a newer version of one that it knows, is carried along
     * as written.
     */
    static Payload payload(String kind, int version, JsonNode node, FieldPath path) {
        if (!node.isObject()) {
            throw new Misread(path.isTop() ? FieldPath.of("payload") : path, node, "an object");
        }
        var type = PayloadKinds.byWord(kind);
        return type.isEmpty() || version > Upcasts.current(kind)
                ? new UnknownPayload(kind, Tree.write(node))
                : type.get().cast(record(type.get(), Upcasts.up(kind, version, node), path));
    }

    private static Object record(Class<?> type, JsonNode node, FieldPath path) {
        if (!node.isObject()) {
            throw new Misread(path, node, "an object");
        }
        var fields = RecordShape.of(type).fields();
        var values = new @Nullable Object[fields.size()];
        for (int i = 0; i < values.length; i++) {
            var field = fields.get(i);
            var child = node.get(field.key());
            var there = path.inside(field.key());
            values[i] = child == null || child.isNull()
                    ? absent(field, there)
                    : value(field.type(), field.element(), child, there);
        }
        return RecordShape.of(type).make(values);
    }

    private static @Nullable Object absent(RecordShape.Field field, FieldPath path) {
        return switch (field.whereAbsent()) {
            case ABSENT -> null;
            case EMPTY_LIST -> java.util.List.of();
            case REFUSED -> throw Misread.missing(path.toString());
        };
    }

    private static Object value(Class<?> type, Class<?> element, JsonNode node, FieldPath path) {
        if (type == int.class || type == Integer.class) {
            if (!node.isIntegralNumber() || !node.canConvertToInt()) {
                throw new Misread(path, node, "a whole number");
            }
            return node.intValue();
        }
        if (type == java.util.List.class) {
            return list(element, node, path);
        }
        if (type == Humidity.class) {
            return humidity(node, path);
        }
        if (type == Payload.class) {
            return nested(node, path);
        }
        if (type.isRecord() && !isText(type)) {
            return record(type, node, path);
        }
        if (!node.isTextual()) {
            throw new Misread(path, node, "text");
        }
        return TextForms.read(type, node, path);
    }

    private static boolean isText(Class<?> type) {
        return Name.class.isAssignableFrom(type)
                || type == EntryId.class
                || type == Temperature.class
                || type == Mass.class
                || type == Altitude.class
                || type == Amount.class;
    }

    private static Humidity humidity(JsonNode node, FieldPath path) {
        if (!node.isNumber()) {
            throw new Misread(path, node, "a number from 0 to 100");
        }
        try {
            return new Humidity(node.doubleValue());
        } catch (OutOfRange outside) {
            throw new Misread(path, node, "a number from 0 to 100");
        }
    }

    private static Payload nested(JsonNode node, FieldPath path) {
        var kind = node.path("kind");
        if (!kind.isTextual()) {
            throw new Misread(path.inside("kind"), kind, "the word of a kind, such as looked");
        }
        var version = node.path("payload_version");
        if (!version.isInt() || version.intValue() < 1) {
            throw new Misread(path.inside("payload_version"), version, "a whole number from 1");
        }
        return payload(kind.textValue(), version.intValue(), node.path("payload"), path.inside("payload"));
    }

    private static Object list(Class<?> element, JsonNode node, FieldPath path) {
        if (!node.isArray()) {
            throw new Misread(path, node, "a list");
        }
        var list = new ArrayList<Object>(node.size());
        for (int i = 0; i < node.size(); i++) {
            list.add(value(element, element, node.get(i), path.at(i)));
        }
        return list;
    }
}
