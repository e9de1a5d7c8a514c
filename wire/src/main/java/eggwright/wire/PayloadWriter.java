package eggwright.wire;

import com.fasterxml.jackson.core.JsonGenerator;
import eggwright.book.entry.Payload;
import eggwright.book.entry.UnknownPayload;
import eggwright.book.name.EntryId;
import eggwright.book.name.Name;
import eggwright.trade.Species;
import eggwright.units.Altitude;
import eggwright.units.Amount;
import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.Temperature;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * Payloads as JSON, by one rule for all: a record is an object with its components in order under snake-case names; what
 * is absent is left out; names, days, hours and measures are text as typed; a humidity is a number whose key ends in
 * {@code _pct}; enums are lower-case words.
 */
final class PayloadWriter {
    private PayloadWriter() {}

    static void payload(JsonGenerator out, Payload payload) throws IOException {
        if (payload instanceof UnknownPayload(var kind, var written)) {
            Tree.write(out, Tree.read(written));
        } else {
            object(out, (Record) payload);
        }
    }

    static void object(JsonGenerator out, Record record) throws IOException {
        out.writeStartObject();
        for (var field : RecordShape.of(record.getClass()).fields()) {
            var value = field.of(record);
            if (value != null) {
                out.writeFieldName(field.key());
                value(out, value);
            }
        }
        out.writeEndObject();
    }

    private static void value(JsonGenerator out, Object value) throws IOException {
        switch (value) {
            case Integer number -> out.writeNumber(number);
            case Double number -> out.writeNumber(number);
            case String text -> out.writeString(text);
            case Name name -> out.writeString(name.text());
            case Species species -> out.writeString(species.word());
            case Enum<?> word -> out.writeString(Words.of(word));
            case Humidity humidity -> out.writeNumber(humidity.pct());
            case List<?> list -> {
                out.writeStartArray();
                for (var each : list) {
                    value(out, each);
                }
                out.writeEndArray();
            }
            case EntryId id -> out.writeString(id.toString());
            case LocalDate day -> out.writeString(day.toString());
            case LocalTime hour -> out.writeString(hour.toString());
            case OffsetDateTime at -> out.writeString(at.toString());
            case Instant at -> out.writeString(at.toString());
            case Temperature degrees -> out.writeString(degrees.toString());
            case Mass mass -> out.writeString(mass.toString());
            case Amount amount -> out.writeString(amount.toString());
            case Altitude height -> out.writeString(height.toString());
            case Payload payload -> nested(out, payload);
            case Record record -> object(out, record);
            default -> throw new IllegalArgumentException("No written form for " + value.getClass());
        }
    }

    /** A payload inside a mend carries its own kind and version. */
    private static void nested(JsonGenerator out, Payload payload) throws IOException {
        out.writeStartObject();
        out.writeStringField("kind", payload.kindWord());
        out.writeNumberField("payload_version", Upcasts.written(payload));
        out.writeFieldName("payload");
        payload(out, payload);
        out.writeEndObject();
    }
}
