package eggwright.desk.note;

import eggwright.book.name.Name;
import eggwright.desk.form.Typed;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes a payload back as it would have been typed. */
final class Written {
    private final Map<String, String> values = new LinkedHashMap<>();
    private final Map<String, OffsetDateTime> moments = new LinkedHashMap<>();

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

    /** Shown by the farm's clock, whatever the clock was that noted it. */
    Written moment(String name, @Nullable OffsetDateTime value) {
        if (value != null) {
            moments.put(name, value);
        }
        return text(name, "");
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

    /** As typed by the farm's clock. */
    Typed done(ZoneId zone) {
        var typed = new LinkedHashMap<>(values);
        moments.forEach((name, at) ->
                typed.put(name, at.atZoneSameInstant(zone).toLocalDateTime().toString()));
        return Typed.of(typed);
    }

    /** The moments in it, each with its own offset. */
    Map<String, OffsetDateTime> moments() {
        return Map.copyOf(moments);
    }
}
