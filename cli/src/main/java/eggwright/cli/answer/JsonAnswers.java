package eggwright.cli.answer;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;

/** Writes answers as JSON, one object a line. */
public final class JsonAnswers {
    private final JsonGenerator json;

    /** Writes to {@code out}, which stays open. */
    public JsonAnswers(Writer out) {
        try {
            json = new JsonFactory().createGenerator(out);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET).disable(JsonGenerator.Feature.FLUSH_PASSED_TO_STREAM);
        json.setRootValueSeparator(null);
    }

    /** Writes one answer and ends its line. */
    public void write(Answer answer) {
        try {
            object(answer);
            json.writeRaw('\n');
            json.flush();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void object(Answer answer) throws IOException {
        json.writeStartObject();
        for (var field : answer.fields()) {
            json.writeFieldName(field.key());
            value(field.value());
        }
        json.writeEndObject();
    }

    private void value(Value value) throws IOException {
        switch (value) {
            case Value.Real(double number) -> {
                if (Double.isFinite(number)) {
                    json.writeNumber(number);
                } else {
                    json.writeNull();
                }
            }
            case Value.Whole(long number) -> json.writeNumber(number);
            case Value.Truth(boolean yes) -> json.writeBoolean(yes);
            case Value.Text(String text) -> json.writeString(text);
            case Value.Many many -> {
                json.writeStartArray();
                for (var each : many.values()) {
                    value(each);
                }
                json.writeEndArray();
            }
            case Value.Group(Answer answer) -> object(answer);
        }
    }
}
