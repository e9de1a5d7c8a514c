package eggwright.desk.note;

import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.ChicksDied;
import eggwright.book.entry.ChicksOrdered;
import eggwright.book.entry.ChicksPlaced;
import eggwright.book.entry.ChicksSold;
import eggwright.book.entry.OrderCancelled;
import eggwright.book.name.BuyerNumber;
import eggwright.book.name.OrderNumber;
import eggwright.book.name.SetName;
import eggwright.desk.form.Field.Need;
import eggwright.trade.caution.Place;
import java.util.List;

/** Chicks after take-off, and promises. */
final class ChickForms {
    static final List<EntryForm> ALL = List.of(placed(), died(), sold(), ordered(), cancelled(), delivered());

    private ChickForms() {}

    private static EntryForm placed() {
        return EntryForm.of(
                "chicks-placed",
                Shelf.CHICKS,
                ChicksPlaced.class,
                asks -> List.of(
                        asks.known().names("set", asks.known().setNames(), Need.OPTIONAL),
                        asks.known().species(),
                        asks.whole("chicks", "chicks"),
                        asks.text("brooder").optional()),
                r -> new ChicksPlaced(
                        r.nameOrNone("set", SetName::new), r.species("species"), r.whole("chicks"), r.text("brooder")),
                it -> new Written()
                        .name("set", it.set())
                        .species(it.species())
                        .whole("chicks", it.chicks())
                        .text("brooder", it.brooder()),
                Place.HEAT_LAMPS,
                Place.ZOONOSES);
    }

    private static EntryForm died() {
        return EntryForm.of(
                "chicks-died",
                Shelf.CHICKS,
                ChicksDied.class,
                asks -> List.of(
                        asks.known().names("set", asks.known().setNames(), Need.OPTIONAL),
                        asks.known().species(),
                        asks.whole("chicks", "chicks"),
                        asks.text("brooder").optional(),
                        asks.text("why").optional()),
                r -> new ChicksDied(
                        r.nameOrNone("set", SetName::new),
                        r.species("species"),
                        r.whole("chicks"),
                        r.text("brooder"),
                        r.text("why")),
                it -> new Written()
                        .name("set", it.set())
                        .species(it.species())
                        .whole("chicks", it.chicks())
                        .text("brooder", it.brooder())
                        .text("why", it.why()),
                Place.REPORTABLE_SIGNS,
                Place.DISPOSAL);
    }

    private static EntryForm sold() {
        return EntryForm.of(
                "chicks-sold",
                Shelf.CHICKS,
                ChicksSold.class,
                asks -> List.of(
                        asks.known().names("set", asks.known().setNames(), Need.OPTIONAL),
                        asks.known().species(),
                        asks.whole("chicks", "chicks"),
                        asks.known().buyer().optional()),
                r -> new ChicksSold(
                        r.nameOrNone("set", SetName::new),
                        r.species("species"),
                        r.whole("chicks"),
                        r.nameOrNone("buyer", BuyerNumber::new)),
                it -> new Written()
                        .name("set", it.set())
                        .species(it.species())
                        .whole("chicks", it.chicks())
                        .name("buyer", it.buyer()),
                Place.ZOONOSES,
                Place.PERMITS);
    }

    private static EntryForm ordered() {
        return EntryForm.of(
                "chicks-ordered",
                Shelf.CHICKS,
                ChicksOrdered.class,
                asks -> List.of(
                        asks.text("order"),
                        asks.known().buyer(),
                        asks.known().species(),
                        asks.whole("chicks", "chicks"),
                        asks.day("day"),
                        asks.remark("note")),
                r -> new ChicksOrdered(
                        r.name("order", OrderNumber::new),
                        r.name("buyer", BuyerNumber::new),
                        r.species("species"),
                        r.whole("chicks"),
                        r.day("day"),
                        r.text("note")),
                it -> new Written()
                        .name("order", it.order())
                        .name("buyer", it.buyer())
                        .species(it.species())
                        .whole("chicks", it.chicks())
                        .day("day", it.day())
                        .text("note", it.note()));
    }

    private static EntryForm cancelled() {
        return EntryForm.of(
                "order-cancelled",
                Shelf.CHICKS,
                OrderCancelled.class,
                asks -> List.of(
                        asks.known().orders(Need.NEEDED), asks.text("why").optional()),
                r -> new OrderCancelled(r.name("order", OrderNumber::new), r.text("why")),
                it -> new Written().name("order", it.order()).text("why", it.why()));
    }

    private static EntryForm delivered() {
        return EntryForm.of(
                "chicks-delivered",
                Shelf.CHICKS,
                ChicksDelivered.class,
                asks -> List.of(
                        asks.known().orders(Need.OPTIONAL),
                        asks.known().buyer(),
                        asks.known().species(),
                        asks.whole("chicks", "chicks"),
                        asks.whole("dead_on_arrival", "chicks").optional()),
                r -> new ChicksDelivered(
                        r.nameOrNone("order", OrderNumber::new),
                        r.name("buyer", BuyerNumber::new),
                        r.species("species"),
                        r.whole("chicks"),
                        r.wholeOrNought("dead_on_arrival")),
                it -> new Written()
                        .name("order", it.order())
                        .name("buyer", it.buyer())
                        .species(it.species())
                        .whole("chicks", it.chicks())
                        .whole("dead_on_arrival", it.deadOnArrival()),
                Place.ZOONOSES,
                Place.PERMITS);
    }
}
