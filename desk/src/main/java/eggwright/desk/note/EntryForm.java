package eggwright.desk.note;

import eggwright.book.entry.Payload;
import eggwright.desk.form.Field;
import eggwright.desk.form.Typed;
import eggwright.trade.caution.Place;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The form of one kind of entry. When it happened and who noted it are asked by every form alike and are no fields of
 * this. {@code reads} of what {@code writes} gives is the payload again.
 *
 * @param kind the word of the kind, as in {@link Payload#kindWord}
 * @param shelf where it is listed
 * @param asks its fields, with the farm's usual values and what the link knew
 * @param reads what was typed; only used where the reader found nothing to mend
 * @param writes a payload of this kind as it would have been typed; for mending
 * @param cautions that belong to this work
 */
record EntryForm(
        String kind,
        Shelf shelf,
        Function<Asks, List<Field>> asks,
        Function<FormReader, Payload> reads,
        Function<Payload, Written> writes,
        List<Place> cautions) {
    EntryForm {
        cautions = List.copyOf(cautions);
    }

    static <P extends Payload> EntryForm of(
            String kind,
            Shelf shelf,
            Class<P> type,
            Function<Asks, List<Field>> asks,
            Function<FormReader, P> reads,
            Function<P, Written> writes,
            Place... cautions) {
        return new EntryForm(
                kind, shelf, asks, reads::apply, payload -> writes.apply(type.cast(payload)), List.of(cautions));
    }

    List<Field> fields(Around around) {
        return asks.apply(new Asks(around));
    }

    Payload read(FormReader reader) {
        return reads.apply(reader);
    }

    /** As it would have been typed by the clock of a zone. */
    Typed written(Payload payload, ZoneId zone) {
        return writes.apply(payload).done(zone);
    }

    /** The moments in a payload as they stand, by the name of their field. */
    Map<String, OffsetDateTime> moments(Payload payload) {
        return writes.apply(payload).moments();
    }
}
