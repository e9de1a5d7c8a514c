package eggwright.wire;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/**
 * JSON text as a tree and back. Numbers keep their digits. Built on the streaming parser alone: the object mapper of the
 * library takes longer to start than a small book takes to read.
 */
final class Tree {
    static final JsonFactory FACTORY = new JsonFactory();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Tree() {}

    /** What is written by a generator. */
    interface Writing {
        void to(JsonGenerator out) throws IOException;
    }

    /**
     * Reads one JSON value that fills the whole text.
     *
     * @throws Misread if the text is not JSON, names a field twice, or holds half a character
     */
    static JsonNode read(String json) {
        try (var parser = FACTORY.createParser(json)) {
            if (parser.nextToken() == null) {
                throw new Misread("This line is empty. An entry is a JSON object on one line.");
            }
            var node = value(parser);
            if (parser.nextToken() != null) {
                throw new Misread("This line goes on after the JSON object. Write one entry a line.");
            }
            return node;
        } catch (JsonProcessingException notJson) {
            var at = notJson.getLocation();
            throw new Misread("This line is not JSON" + (at == null ? "" : " (see column " + at.getColumnNr() + ")")
                    + ". An entry is a JSON object on one line.");
        } catch (IOException impossible) {
            throw new UncheckedIOException("Reading from memory", impossible);
        }
    }

    private static JsonNode value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                var object = NODES.objectNode();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    var name = whole(parser.currentName());
                    parser.nextToken();
                    if (object.replace(name, value(parser)) != null) {
                        throw new Misread("Field " + name + " is written twice. Write each field once.");
                    }
                }
                yield object;
            }
            case START_ARRAY -> {
                var array = NODES.arrayNode();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    array.add(value(parser));
                }
                yield array;
            }
            case VALUE_STRING -> NODES.textNode(whole(parser.getText()));
            case VALUE_NUMBER_INT ->
                switch (parser.getNumberType()) {
                    case INT -> NODES.numberNode(parser.getIntValue());
                    case LONG -> NODES.numberNode(parser.getLongValue());
                    case BIG_INTEGER, FLOAT, DOUBLE, BIG_DECIMAL -> NODES.numberNode(parser.getBigIntegerValue());
                };
            case VALUE_NUMBER_FLOAT -> DecimalNode.valueOf(parser.getDecimalValue());
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            case VALUE_NULL -> NODES.nullNode();
            case NOT_AVAILABLE, END_OBJECT, END_ARRAY, FIELD_NAME, VALUE_EMBEDDED_OBJECT ->
                throw new IllegalStateException("No value begins with " + parser.currentToken());
        };
    }

    /** Half of a surrogate pair cannot be kept as UTF-8 and would come back as another text. */
    private static String whole(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isSurrogate(c)) {
                if (!Character.isHighSurrogate(c)
                        || i + 1 == text.length()
                        || !Character.isLowSurrogate(text.charAt(i + 1))) {
                    throw new Misread("This line holds half a character (character " + (i + 1)
                            + " of a text). Write the text again.");
                }
                i++;
            }
        }
        return text;
    }

    /** The tree on one line. */
    static String write(JsonNode node) {
        return text(out -> write(out, node));
    }

    static void write(JsonGenerator out, JsonNode node) throws IOException {
        switch (node.getNodeType()) {
            case OBJECT -> {
                out.writeStartObject();
                for (var field : node.properties()) {
                    out.writeFieldName(field.getKey());
                    write(out, field.getValue());
                }
                out.writeEndObject();
            }
            case ARRAY -> {
                out.writeStartArray();
                for (var each : node) {
                    write(out, each);
                }
                out.writeEndArray();
            }
            case STRING -> out.writeString(node.textValue());
            case NUMBER -> out.writeNumber(node.asText());
            case BOOLEAN -> out.writeBoolean(node.booleanValue());
            case NULL, MISSING -> out.writeNull();
            case BINARY, POJO -> throw new IllegalStateException("JSON text has no " + node.getNodeType());
        }
    }

    /** What a writing writes, on one line. */
    static String text(Writing writing) {
        var text = new StringWriter();
        try (var out = FACTORY.createGenerator(text)) {
            writing.to(out);
        } catch (IOException impossible) {
            throw new UncheckedIOException("Writing to memory", impossible);
        }
        return text.toString();
    }
}
