package eggwright.wire;

import com.fasterxml.jackson.databind.JsonNode;
import eggwright.book.name.EntryId;
import eggwright.book.name.Name;
import eggwright.trade.Species;
import eggwright.trade.SpeciesWord;
import eggwright.units.Altitude;
import eggwright.units.Amount;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;

/** Reads what is written as text: words, names, days, hours, instants and measures. */
final class TextForms {
    static final String INSTANT = "an instant with its offset, such as 2027-04-05T08:00-05:00";

    private TextForms() {}

    static Object read(Class<?> type, JsonNode node, FieldPath path) {
        var text = node.textValue();
        if (type == String.class) {
            return text;
        }
        if (type == Species.class) {
            return switch (Species.parse(text)) {
                case SpeciesWord.Known(var species) -> species;
                case SpeciesWord.Unknown unknown -> throw new Misread("Field " + path + ": " + unknown.message());
            };
        }
        if (type.isEnum()) {
            var word = Words.in(type).get(text);
            if (word == null) {
                throw new Misread(
                        path, node, "one of " + String.join(", ", Words.in(type).keySet()));
            }
            return word;
        }
        try {
            return Name.class.isAssignableFrom(type)
                    ? RecordShape.of(type).make(new Object[] {text})
                    : parse(type, text);
        } catch (DateTimeException notOne) {
            throw new Misread(path, node, form(type));
        } catch (OutOfRange refused) {
            throw new Misread("Field " + path + ": " + refused.getMessage());
        }
    }

    private static Object parse(Class<?> type, String text) {
        if (type == LocalDate.class) {
            return LocalDate.parse(text);
        } else if (type == LocalTime.class) {
            return LocalTime.parse(text);
        } else if (type == OffsetDateTime.class) {
            return Instants.withOffset(text);
        } else if (type == Temperature.class) {
            return Temperature.parse(text);
        } else if (type == Mass.class) {
            return Mass.parse(text);
        } else if (type == Altitude.class) {
            return Altitude.parse(text);
        } else if (type == Amount.class) {
            return Amount.parse(text);
        } else if (type == EntryId.class) {
            return EntryId.parse(text);
        }
        throw new IllegalStateException("No text form for " + type);
    }

    private static String form(Class<?> type) {
        if (type == LocalDate.class) {
            return "a day, such as 2027-04-05";
        }
        return type == LocalTime.class ? "an hour, such as 08:00" : INSTANT;
    }
}
