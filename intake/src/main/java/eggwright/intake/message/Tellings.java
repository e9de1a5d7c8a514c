package eggwright.intake.message;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import eggwright.climate.reading.ReadingUnit;
import eggwright.intake.message.Complaint.Kind;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads the body of a message: a plain number, with or without its unit ({@code 99.5}, {@code 99.5 F}), or JSON (RFC
 * 8259): {@code {"value": 99.5, "at": "2027-04-05T06:00:00-05:00"}}, or a list of such. {@code unit} may stand beside
 * {@code value}. A member of another name is refused rather than passed over, since it may be a time.
 */
final class Tellings {
    static final int MOST = 2_000;

    private static final Pattern PLAIN =
            Pattern.compile("([-+]?\\d{1,15}(?:\\.\\d{0,15})?(?:[eE][-+]?\\d{1,2})?)\\s*(\\D{0,20})");

    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(com.fasterxml.jackson.core.StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final ReadingUnit unit;
    private final Moments moments;
    private final List<Telling> all = new ArrayList<>();

    private Tellings(ReadingUnit unit, Moments moments) {
        this.unit = unit;
        this.moments = moments;
    }

    /** What came of reading. */
    sealed interface Parsed {
        /** One at least. Where there is more than one, each says its time. */
        record Whole(List<Telling> tellings) implements Parsed {}

        record Wrong(Complaint why) implements Parsed {}
    }

    /** Ends the reading of one message. */
    private static final class Stop extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient Complaint why;

        Stop(Kind kind, Object... about) {
            super(null, null, false, false);
            this.why = Complaint.of(kind, about);
        }
    }

    static Parsed read(byte[] body, ReadingUnit unit, Moments moments) {
        try {
            var whole = text(body);
            var text = whole.strip();
            var tellings = new Tellings(unit, moments);
            if (text.isEmpty()) {
                throw new Stop(Kind.EMPTY);
            }
            if (text.startsWith("{") || text.startsWith("[")) {
                // Not stripped: its lines are counted as they were sent.
                tellings.json(whole);
            } else {
                tellings.plain(text);
            }
            return new Parsed.Whole(tellings.checked());
        } catch (Stop stop) {
            return new Parsed.Wrong(stop.why);
        }
    }

    private static String text(byte[] body) throws Stop {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(body))
                    .toString();
        } catch (CharacterCodingException notText) {
            throw new Stop(Kind.NOT_A_NUMBER, new String(body, StandardCharsets.ISO_8859_1));
        }
    }

    private List<Telling> checked() throws Stop {
        if (all.isEmpty()) {
            throw new Stop(Kind.EMPTY);
        }
        if (all.size() > 1 && all.stream().anyMatch(t -> t.at().isEmpty())) {
            throw new Stop(Kind.TIMES_NEEDED);
        }
        return List.copyOf(all);
    }

    private void plain(String text) throws Stop {
        var match = PLAIN.matcher(text);
        if (!match.matches()) {
            throw new Stop(Kind.NOT_A_NUMBER, text);
        }
        var said = match.group(2).strip();
        if (!said.isEmpty() && Units.named(said).isEmpty()) {
            throw new Stop(Kind.NOT_A_NUMBER, text);
        }
        checkUnit(said);
        all.add(new Telling(number(match.group(1)), Optional.empty()));
    }

    private static double number(String text) throws Stop {
        try {
            double number = Double.parseDouble(text);
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            throw new Stop(Kind.NOT_A_NUMBER, text);
        }
        throw new Stop(Kind.NOT_A_NUMBER, text);
    }

    private void checkUnit(String said) throws Stop {
        if (!said.isEmpty() && !Units.named(said).equals(Optional.of(unit))) {
            throw new Stop(Kind.OTHER_UNIT, said, unit.sign());
        }
    }

    private void json(String text) throws Stop {
        try (var parser = JSON.createParser(text)) {
            if (parser.nextToken() == JsonToken.START_ARRAY) {
                for (var next = parser.nextToken(); next != JsonToken.END_ARRAY; next = parser.nextToken()) {
                    if (all.size() >= MOST) {
                        throw new Stop(Kind.TOO_MANY_READINGS, MOST);
                    }
                    one(parser);
                }
            } else {
                one(parser);
            }
            if (parser.nextToken() != null) {
                throw notJson(parser.currentLocation());
            }
        } catch (JacksonException notJson) {
            throw notJson(notJson.getLocation());
        } catch (IOException notJson) {
            throw notJson(null);
        }
    }

    private static Stop notJson(@org.jspecify.annotations.Nullable JsonLocation at) {
        return at == null || at.getLineNr() < 1
                ? new Stop(Kind.NOT_JSON)
                : new Stop(Kind.NOT_JSON, at.getLineNr(), at.getColumnNr());
    }

    private void one(JsonParser parser) throws IOException, Stop {
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            throw new Stop(Kind.NO_VALUE);
        }
        Optional<Double> value = Optional.empty();
        Optional<java.time.Instant> at = Optional.empty();
        for (var name = parser.nextFieldName(); name != null; name = parser.nextFieldName()) {
            var token = parser.nextToken();
            switch (name) {
                case "value" -> {
                    if (token == null || !token.isNumeric()) {
                        throw new Stop(Kind.NOT_A_NUMBER, parser.getText());
                    }
                    value = Optional.of(number(parser.getText()));
                }
                case "at" -> at = Optional.of(moment(token, parser.getText()));
                case "unit" -> checkUnit(parser.getText());
                default -> throw new Stop(Kind.UNKNOWN_MEMBER, name);
            }
        }
        all.add(new Telling(value.orElseThrow(() -> new Stop(Kind.NO_VALUE)), at));
    }

    private java.time.Instant moment(@org.jspecify.annotations.Nullable JsonToken token, String text) throws Stop {
        if (token != JsonToken.VALUE_STRING) {
            throw new Stop(Kind.NOT_A_TIME, text);
        }
        return switch (moments.read(text)) {
            case Moments.Read.At(var instant) -> instant;
            case Moments.Read.Wrong(var kind) -> throw new Stop(kind, text);
        };
    }
}
