package eggwright.desk.note;

import eggwright.book.name.Name;
import eggwright.desk.form.Typed;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes a payload back as it would have been typed. */
final class Written {
    private final Map<String, String> values = new LinkedHashMap<>();

    Written text(String name, @Nullable String value) {
        values.put(name, value == null ? "" : value);
        return this;
    }

    Written whole(String name, @Nullable Integer value) {
        return text(name, value == null ? "" : Integer.toString(value));
    }

    Written name(String name, @Nullable Name value) {
        return text(name, value == null ? "" : value.text());
    }

    Written day(String name, @Nullable LocalDate value) {
        return text(name, value == null ? "" : value.toString());
    }

    Written hour(String name, @Nullable LocalTime value) {
        return text(name, value == null ? "" : value.toString());
    }

    Written choice(String name, Enum<?> value) {
        return text(name, value.name().toLowerCase(Locale.ROOT));
    }

    Written species(Species value) {
        return text("species", value.word());
    }

    Written typed(String name, @Nullable Object value) {
        return text(name, value == null ? "" : value.toString());
    }

    Typed done() {
        return Typed.of(values);
    }
}
