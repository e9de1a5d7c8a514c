package eggwright.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import eggwright.book.entry.Payload;
import eggwright.book.entry.PayloadKinds;
import eggwright.book.entry.UnknownPayload;
import eggwright.book.name.EntryId;
import eggwright.book.name.Name;
import eggwright.trade.Species;
import eggwright.trade.SpeciesWord;
import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Payloads as JSON trees, by one rule for all: a record is an object with its components in order under snake-case names;
 * what is absent is left out; names, days, hours and measures are text as typed; a humidity is a number whose key ends in
 * {@code _pct}; enums are lower-case words.
 */
final class PayloadShape {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private PayloadShape() {}

    static JsonNode write(Object value) {
        return switch (value) {
            case Integer number -> NODES.numberNode(number);
            case String text -> NODES.textNode(text);
            case Name name -> NODES.textNode(name.text());
            case EntryId id -> NODES.textNode(id.toString());
            case Species species -> NODES.textNode(species.word());
            case Enum<?> word -> NODES.textNode(Words.of(word));
            case LocalDate day -> NODES.textNode(day.toString());
            case LocalTime hour -> NODES.textNode(hour.toString());
            case OffsetDateTime at -> NODES.textNode(at.toString());
            case Temperature degrees -> NODES.textNode(degrees.toString());
            case Mass mass -> NODES.textNode(mass.toString());
            case Humidity humidity -> NODES.numberNode(humidity.pct());
            case List<?> list -> {
                var array = NODES.arrayNode();
                list.forEach(each -> array.add(write(each)));
                yield array;
            }
            case Payload payload when payload instanceof Record -> nested(payload);
            case Record record -> object(record);
            default -> throw new IllegalArgumentException("No written form for " + value.getClass());
        };
    }

    /** A payload inside a mend carries its kind. */
    private static ObjectNode nested(Payload payload) {
        var node = NODES.objectNode();
        node.put("kind", payload.kindWord());
        node.set("payload", object((Record) payload));
        return node;
    }

    static ObjectNode object(Record record) {
        var node = NODES.objectNode();
        for (var component : record.getClass().getRecordComponents()) {
            var value = value(component, record);
            if (value != null) {
                node.set(key(component), write(value));
            }
        }
        return node;
    }

    private static String key(RecordComponent component) {
        var name = Words.snake(component.getName());
        return component.getType() == Humidity.class ? name + "_pct" : name;
    }

    private static @Nullable Object value(RecordComponent component, Record record) {
        try {
            var accessor = component.getAccessor();
            accessor.setAccessible(true);
            return accessor.invoke(record);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("A record hides " + component.getName(), impossible);
        }
    }

    /** Reads a payload of a kind; one this version does not know is kept as written. */
    static Payload payload(String kind, JsonNode node) {
        var type = PayloadKinds.byWord(kind);
        return type.isEmpty()
                ? new UnknownPayload(kind, node.toString())
                : type.get().cast(record(type.get(), node, ""));
    }

    private static Object record(Class<?> type, JsonNode node, String path) {
        if (!node.isObject()) {
            throw new Misread(path, node, "an object");
        }
        var components = type.getRecordComponents();
        var types = new Class<?>[components.length];
        var values = new @Nullable Object[components.length];
        for (int i = 0; i < components.length; i++) {
            var component = components[i];
            types[i] = component.getType();
            var inside = path.isEmpty() ? key(component) : path + "." + key(component);
            var child = node.get(key(component));
            values[i] = child == null || child.isNull()
                    ? absent(component, inside)
                    : read(component.getGenericType(), component.getType(), child, inside);
        }
        try {
            var constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof OutOfRange outOfRange) {
                throw outOfRange;
            }
            throw new Misread(path, node, "values that belong together");
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("A record cannot be made: " + type, impossible);
        }
    }

    private static @Nullable Object absent(RecordComponent component, String path) {
        if (component.getType() == List.class && !isNullable(component)) {
            return List.of();
        }
        if (isNullable(component)) {
            return null;
        }
        throw new OutOfRange("Field " + path + " is missing.");
    }

    private static boolean isNullable(RecordComponent component) {
        return component.getAnnotatedType().isAnnotationPresent(Nullable.class);
    }

    private static Object read(Type generic, Class<?> type, JsonNode node, String path) {
        if (type == int.class || type == Integer.class) {
            if (!node.isIntegralNumber() || !node.canConvertToInt()) {
                throw new Misread(path, node, "a whole number");
            }
            return node.intValue();
        }
        if (type == List.class) {
            return list(generic, node, path);
        }
        if (type == Humidity.class) {
            if (!node.isNumber()) {
                throw new Misread(path, node, "a number from 0 to 100");
            }
            return new Humidity(node.doubleValue());
        }
        if (type == Payload.class) {
            var kind = node.path("kind");
            if (!kind.isTextual()) {
                throw new Misread(path + ".kind", kind, "the word of a kind");
            }
            return payload(kind.textValue(), node.path("payload"));
        }
        if (type.isRecord() && !Name.class.isAssignableFrom(type) && !isText(type)) {
            return record(type, node, path);
        }
        if (!node.isTextual()) {
            throw new Misread(path, node, "text");
        }
        return text(type, node.textValue(), node, path);
    }

    private static boolean isText(Class<?> type) {
        return type == EntryId.class || type == Temperature.class || type == Mass.class;
    }

    private static Object list(Type generic, JsonNode node, String path) {
        if (!(node instanceof ArrayNode array) || !(generic instanceof ParameterizedType parameterized)) {
            throw new Misread(path, node, "a list");
        }
        var element = (Class<?>) parameterized.getActualTypeArguments()[0];
        var list = new ArrayList<Object>();
        for (int i = 0; i < array.size(); i++) {
            list.add(read(element, element, array.get(i), path + "[" + i + "]"));
        }
        return list;
    }

    private static Object text(Class<?> type, String text, JsonNode node, String path) {
        if (type == String.class) {
            return text;
        }
        if (type == Species.class) {
            return switch (Species.parse(text)) {
                case SpeciesWord.Known(var species) -> species;
                case SpeciesWord.Unknown unknown -> throw new OutOfRange("Field " + path + ": " + unknown.message());
            };
        }
        if (type.isEnum()) {
            for (var constant : type.getEnumConstants()) {
                if (Words.of((Enum<?>) constant).equals(text)) {
                    return constant;
                }
            }
            throw new Misread(
                    path,
                    node,
                    "one of the words of " + Words.snake(type.getSimpleName()).substring(1));
        }
        try {
            if (type == LocalDate.class) {
                return LocalDate.parse(text);
            } else if (type == LocalTime.class) {
                return LocalTime.parse(text);
            } else if (type == OffsetDateTime.class) {
                return OffsetDateTime.parse(text);
            } else if (type == Temperature.class) {
                return Temperature.parse(text);
            } else if (type == Mass.class) {
                return Mass.parse(text);
            } else if (type == EntryId.class) {
                return EntryId.parse(text);
            }
            var constructor = type.getDeclaredConstructor(String.class);
            return constructor.newInstance(text);
        } catch (java.time.DateTimeException notATime) {
            throw new Misread(path, node, "a day, an hour or an instant in ISO form");
        } catch (InvocationTargetException refused) {
            var cause = refused.getCause();
            throw new OutOfRange("Field " + path + ": " + (cause == null ? text : cause.getMessage()));
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("No text form for " + type, impossible);
        }
    }

    /** A field that does not hold what it should. */
    static final class Misread extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Misread(String field, JsonNode found, String right) {
            super("Field " + field + " is " + (found.isMissingNode() ? "missing" : found.toString()) + "; it should be "
                    + right + ".");
        }
    }
}
