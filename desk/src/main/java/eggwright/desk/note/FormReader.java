package eggwright.desk.note;

import eggwright.book.name.PenName;
import eggwright.desk.form.Form;
import eggwright.desk.form.Typed;
import eggwright.desk.words.RefusalWords;
import eggwright.desk.words.Words;
import eggwright.trade.Species;
import eggwright.trade.SpeciesWord;
import eggwright.units.OutOfRange;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Reads what was typed into values, and collects everything that is to be mended instead of stopping at the first. A
 * value that could not be read is stood in for, so that the rest can be read too; it is never kept.
 */
public final class FormReader {
    /** The years that a book holds. */
    private static final int FIRST_YEAR = 1900;

    private static final int LAST_YEAR = 2099;

    private final Typed typed;
    private final Words words;
    private final ZoneId zone;
    private final Map<String, OffsetDateTime> stood;
    private final String prefix;
    private final Function<PenName, Optional<Species>> pens;
    private final List<Form.ToMend> toMend;

    /**
     * @param zone of the hours that are typed
     * @param pens what a pen holds, where that is known
     */
    public FormReader(Typed typed, Words words, ZoneId zone, Function<PenName, Optional<Species>> pens) {
        this(typed, words, zone, pens, Map.of(), "", new ArrayList<>());
    }

    private FormReader(
            Typed typed,
            Words words,
            ZoneId zone,
            Function<PenName, Optional<Species>> pens,
            Map<String, OffsetDateTime> stood,
            String prefix,
            List<Form.ToMend> toMend) {
        this.typed = typed;
        this.words = words;
        this.zone = zone;
        this.pens = pens;
        this.stood = stood;
        this.prefix = prefix;
        this.toMend = toMend;
    }

    /**
     * A reader of a form that mends: a moment that was not changed stays as it was noted.
     *
     * @param moments as they stand in the book, by the name of their field
     */
    FormReader mending(Map<String, OffsetDateTime> moments) {
        return new FormReader(typed, words, zone, pens, moments, prefix, toMend);
    }

    /** Everything to be mended so far. */
    public List<Form.ToMend> toMend() {
        return List.copyOf(toMend);
    }

    /** Says that a field is to be mended, in the words of this feature. */
    public void mend(String name, String key, Object... arguments) {
        toMend.add(new Form.ToMend(prefix + name, words.say(key, arguments)));
    }

    /** Says that a field is to be mended, or the form where no field is named, because a value refused what was typed. */
    public void mend(String name, OutOfRange refused) {
        toMend.add(
                new Form.ToMend(name.isEmpty() ? "" : prefix + name, new RefusalWords(words.language()).say(refused)));
    }

    /** What was typed, without blanks around it; empty where nothing was. */
    public String text(String name) {
        return typed.text(prefix + name);
    }

    public boolean isEmpty(String name) {
        return text(name).isEmpty();
    }

    /** Every value chosen under a name. */
    public List<String> all(String name) {
        return typed.all(prefix + name);
    }

    /** A count that must be there. */
    public int whole(String name) {
        if (isEmpty(name)) {
            mend(name, "reader.wholeNeeded");
            return 0;
        }
        var read = wholeOrNone(name);
        return read == null ? 0 : read;
    }

    /** A count that is nought where nothing was typed. */
    public int wholeOrNought(String name) {
        var read = wholeOrNone(name);
        return read == null ? 0 : read;
    }

    /** A count that may be absent. */
    public @Nullable Integer wholeOrNone(String name) {
        var text = text(name).replace("\u00a0", "").replace(" ", "");
        if (text.isEmpty()) {
            return null;
        }
        if (!text.matches("\\d{1,7}")) {
            mend(name, "reader.notWhole", text(name));
            return null;
        }
        int count = Integer.parseInt(text);
        if (count > 1_000_000) {
            mend(name, "reader.tooMany", text(name));
            return null;
        }
        return count;
    }

    /** A name that must be there. */
    public <N> N name(String name, Function<String, N> of) {
        if (isEmpty(name)) {
            mend(name, "reader.needed");
            return of.apply("?");
        }
        var read = nameOrNone(name, of);
        return read == null ? of.apply("?") : read;
    }

    /** A name that may be absent. */
    public <N> @Nullable N nameOrNone(String name, Function<String, N> of) {
        return isEmpty(name) ? null : tried(name, () -> of.apply(text(name)));
    }

    /** A value that a type reads itself, such as {@code 99.5F}; absent where nothing was typed. */
    public <V> @Nullable V measureOrNone(String name, Function<String, V> parse) {
        return isEmpty(name) ? null : tried(name, () -> parse.apply(text(name)));
    }

    private <V> @Nullable V tried(String name, Supplier<V> read) {
        try {
            return read.get();
        } catch (OutOfRange refused) {
            mend(name, refused);
            return null;
        }
    }

    /** A choice that must be made. */
    public <E extends Enum<E>> E choice(String name, Class<E> of) {
        var first = of.getEnumConstants()[0];
        if (isEmpty(name)) {
            mend(name, "reader.choiceNeeded");
            return first;
        }
        for (var value : of.getEnumConstants()) {
            if (value.name().toLowerCase(Locale.ROOT).equals(text(name))) {
                return value;
            }
        }
        mend(name, "reader.notAChoice", text(name));
        return first;
    }

    public Species species(String name) {
        if (isEmpty(name)) {
            mend(name, "reader.choiceNeeded");
            return Species.PHEASANT;
        }
        return switch (Species.parse(text(name))) {
            case SpeciesWord.Known(var species) -> species;
            case SpeciesWord.Unknown unknown -> {
                mend(name, "reader.species", unknown.typed(), unknown.nearest().word());
                yield Species.PHEASANT;
            }
        };
    }

    /** The species chosen; where none was, that of the pen in another field. */
    public Species species(String name, String penField) {
        if (!isEmpty(name) || isEmpty(penField)) {
            return species(name);
        }
        try {
            var held = pens.apply(new PenName(text(penField)));
            if (held.isEmpty()) {
                mend(name, "reader.speciesOfPen");
            }
            return held.orElse(Species.PHEASANT);
        } catch (OutOfRange notAPen) {
            // Said beside the pen.
            return Species.PHEASANT;
        }
    }

    public LocalDate day(String name) {
        if (isEmpty(name)) {
            mend(name, "reader.dayNeeded");
            return LocalDate.EPOCH;
        }
        var read = dayOrNone(name);
        return read == null ? LocalDate.EPOCH : read;
    }

    public @Nullable LocalDate dayOrNone(String name) {
        if (isEmpty(name)) {
            return null;
        }
        try {
            return LocalDate.parse(text(name));
        } catch (DateTimeException notADay) {
            mend(name, "reader.notADay", text(name));
            return null;
        }
    }

    public @Nullable LocalTime hourOrNone(String name) {
        if (isEmpty(name)) {
            return null;
        }
        try {
            return LocalTime.parse(text(name));
        } catch (DateTimeException notAnHour) {
            mend(name, "reader.notAnHour", text(name));
            return null;
        }
    }

    /** A day and hour of the farm's clock. Of the two instants of an hour that comes twice, the first is meant. */
    public @Nullable OffsetDateTime momentOrNone(String name) {
        if (isEmpty(name)) {
            return null;
        }
        try {
            var read = LocalDateTime.parse(text(name));
            if (read.getYear() < FIRST_YEAR || read.getYear() > LAST_YEAR) {
                mend(name, "reader.year", text(name));
                return null;
            }
            var was = stood.get(name);
            return was != null && was.atZoneSameInstant(zone).toLocalDateTime().equals(read)
                    ? was
                    : read.atZone(zone).toOffsetDateTime();
        } catch (DateTimeException notAMoment) {
            mend(name, "reader.notAMoment", text(name));
            return null;
        }
    }

    /** The rows of a repeated field that hold anything. */
    public List<FormReader> rows(String name) {
        if (typed.holdsTooManyRows(prefix + name)) {
            mend(name, "reader.tooManyRows", Typed.MOST_ROWS);
        }
        return typed.filledRows(prefix + name).stream()
                .map(row -> new FormReader(typed, words, zone, pens, Map.of(), row.name() + ".", toMend))
                .toList();
    }

    /** Makes a value whose own checks may still refuse; the refusal stands at the top of the form. */
    public <T> @Nullable T made(Supplier<T> make) {
        return tried("", make);
    }
}
