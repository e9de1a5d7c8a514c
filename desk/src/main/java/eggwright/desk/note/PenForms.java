package eggwright.desk.note;

import eggwright.book.entry.PenChange;
import eggwright.book.entry.PenChanged;
import eggwright.book.entry.PenClosed;
import eggwright.book.entry.PenOpened;
import eggwright.book.name.PenName;
import eggwright.desk.form.Field.Need;
import eggwright.trade.caution.Place;
import java.util.List;

/** Breeding pens. */
final class PenForms {
    static final List<EntryForm> ALL = List.of(opened(), changed(), closed());

    private PenForms() {}

    private static EntryForm opened() {
        return EntryForm.of(
                "pen-opened",
                Shelf.PENS,
                PenOpened.class,
                asks -> List.of(
                        asks.text("pen"),
                        asks.known().species(),
                        asks.whole("cocks", "birds"),
                        asks.whole("hens", "birds"),
                        asks.remark("note")),
                r -> new PenOpened(
                        r.name("pen", PenName::new),
                        r.species("species"),
                        r.whole("cocks"),
                        r.whole("hens"),
                        r.text("note")),
                it -> new Written()
                        .name("pen", it.pen())
                        .species(it.species())
                        .whole("cocks", it.cocks())
                        .whole("hens", it.hens())
                        .text("note", it.note()),
                Place.PERMITS);
    }

    private static EntryForm changed() {
        return EntryForm.of(
                "pen-changed",
                Shelf.PENS,
                PenChanged.class,
                asks -> List.of(
                        asks.known().pens(Need.NEEDED),
                        asks.choice("change", PenChange.class, PenChange.BIRDS_IN),
                        asks.whole("cocks", "birds").optional(),
                        asks.whole("hens", "birds").optional(),
                        asks.text("why").optional()),
                r -> new PenChanged(
                        r.name("pen", PenName::new),
                        r.choice("change", PenChange.class),
                        r.wholeOrNought("cocks"),
                        r.wholeOrNought("hens"),
                        r.text("why")),
                it -> new Written()
                        .name("pen", it.pen())
                        .choice("change", it.change())
                        .whole("cocks", it.cocks())
                        .whole("hens", it.hens())
                        .text("why", it.why()),
                Place.REPORTABLE_SIGNS);
    }

    private static EntryForm closed() {
        return EntryForm.of(
                "pen-closed",
                Shelf.PENS,
                PenClosed.class,
                asks -> List.of(asks.known().pens(Need.NEEDED), asks.text("why").optional()),
                r -> new PenClosed(r.name("pen", PenName::new), r.text("why")),
                it -> new Written().name("pen", it.pen()).text("why", it.why()));
    }
}
