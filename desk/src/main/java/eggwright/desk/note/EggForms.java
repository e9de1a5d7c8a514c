package eggwright.desk.note;

import eggwright.book.entry.EggsCounted;
import eggwright.book.entry.EggsDiscarded;
import eggwright.book.entry.EggsEaten;
import eggwright.book.entry.EggsGathered;
import eggwright.book.entry.EggsReceived;
import eggwright.book.entry.EggsSold;
import eggwright.book.entry.ReceivedFor;
import eggwright.book.entry.RejectReason;
import eggwright.book.entry.Rejected;
import eggwright.book.name.BuyerNumber;
import eggwright.book.name.PenName;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Need;
import eggwright.trade.caution.Place;
import java.util.ArrayList;
import java.util.List;

/** The egg room: gathered, received, sold, eaten, discarded, counted. */
final class EggForms {
    static final List<EntryForm> ALL = List.of(gathered(), received(), sold(), eaten(), discarded(), counted());

    private EggForms() {}

    private static EntryForm gathered() {
        return EntryForm.of(
                "eggs-gathered",
                Shelf.EGGS,
                EggsGathered.class,
                asks -> {
                    var fields = new ArrayList<Field>();
                    fields.add(asks.known().pens(Need.OPTIONAL));
                    fields.add(asks.known().speciesOfPen());
                    fields.add(asks.eggs("kept"));
                    fields.add(asks.day("laid_from").withValue(asks.today()));
                    fields.add(asks.day("laid_to").withValue(asks.today()));
                    for (var reason : RejectReason.values()) {
                        fields.add(asks.eggs("rejected_" + reason.word()));
                    }
                    return fields;
                },
                r -> {
                    var rejected = new ArrayList<Rejected>();
                    for (var reason : RejectReason.values()) {
                        int eggs = r.wholeOrNought("rejected_" + reason.word());
                        if (eggs > 0) {
                            rejected.add(new Rejected(reason, eggs));
                        }
                    }
                    return new EggsGathered(
                            r.nameOrNone("pen", PenName::new),
                            r.species("species", "pen"),
                            r.day("laid_from"),
                            r.day("laid_to"),
                            r.whole("kept"),
                            rejected);
                },
                it -> {
                    var written = new Written()
                            .name("pen", it.pen())
                            .species(it.species())
                            .day("laid_from", it.laidFrom())
                            .day("laid_to", it.laidTo())
                            .whole("kept", it.kept());
                    it.rejected()
                            .forEach(r -> written.whole("rejected_" + r.why().word(), r.eggs()));
                    return written;
                },
                Place.ZOONOSES,
                Place.REPORTABLE_SIGNS);
    }

    private static EntryForm received() {
        return EntryForm.of(
                "eggs-received",
                Shelf.EGGS,
                EggsReceived.class,
                asks -> List.of(
                        asks.text("kept_as"),
                        asks.known().species(),
                        asks.eggs("eggs"),
                        asks.choice("purpose", ReceivedFor.class, ReceivedFor.BOUGHT_IN),
                        asks.text("from").optional(),
                        asks.day("laid_from").optional(),
                        asks.day("laid_to").optional()),
                r -> new EggsReceived(
                        r.name("kept_as", PenName::new),
                        r.species("species"),
                        r.dayOrNone("laid_from"),
                        r.dayOrNone("laid_to"),
                        r.whole("eggs"),
                        r.choice("purpose", ReceivedFor.class),
                        r.text("from")),
                it -> new Written()
                        .name("kept_as", it.keptAs())
                        .species(it.species())
                        .day("laid_from", it.laidFrom())
                        .day("laid_to", it.laidTo())
                        .whole("eggs", it.eggs())
                        .choice("purpose", it.purpose())
                        .text("from", it.from()),
                Place.PERMITS);
    }

    private static List<Field> leaving(Asks asks, Field... more) {
        var fields = new ArrayList<Field>();
        fields.add(asks.known().pens(Need.OPTIONAL));
        fields.add(asks.known().speciesOfPen());
        fields.add(asks.eggs("eggs"));
        fields.addAll(List.of(more));
        fields.add(asks.day("laid_from").optional());
        fields.add(asks.day("laid_to").optional());
        return fields;
    }

    private static EntryForm sold() {
        return EntryForm.of(
                "eggs-sold",
                Shelf.EGGS,
                EggsSold.class,
                asks -> leaving(asks, asks.known().buyer().optional()),
                r -> new EggsSold(
                        r.nameOrNone("pen", PenName::new),
                        r.species("species", "pen"),
                        r.dayOrNone("laid_from"),
                        r.dayOrNone("laid_to"),
                        r.nameOrNone("buyer", BuyerNumber::new),
                        r.whole("eggs")),
                it -> new Written()
                        .name("pen", it.pen())
                        .species(it.species())
                        .day("laid_from", it.laidFrom())
                        .day("laid_to", it.laidTo())
                        .name("buyer", it.buyer())
                        .whole("eggs", it.eggs()),
                Place.PERMITS);
    }

    private static EntryForm eaten() {
        return EntryForm.of(
                "eggs-eaten",
                Shelf.EGGS,
                EggsEaten.class,
                asks -> leaving(asks),
                r -> new EggsEaten(
                        r.nameOrNone("pen", PenName::new),
                        r.species("species", "pen"),
                        r.dayOrNone("laid_from"),
                        r.dayOrNone("laid_to"),
                        r.whole("eggs")),
                it -> new Written()
                        .name("pen", it.pen())
                        .species(it.species())
                        .day("laid_from", it.laidFrom())
                        .day("laid_to", it.laidTo())
                        .whole("eggs", it.eggs()));
    }

    private static EntryForm discarded() {
        return EntryForm.of(
                "eggs-discarded",
                Shelf.EGGS,
                EggsDiscarded.class,
                asks -> leaving(asks, asks.text("why").optional()),
                r -> new EggsDiscarded(
                        r.nameOrNone("pen", PenName::new),
                        r.species("species", "pen"),
                        r.dayOrNone("laid_from"),
                        r.dayOrNone("laid_to"),
                        r.whole("eggs"),
                        r.text("why")),
                it -> new Written()
                        .name("pen", it.pen())
                        .species(it.species())
                        .day("laid_from", it.laidFrom())
                        .day("laid_to", it.laidTo())
                        .whole("eggs", it.eggs())
                        .text("why", it.why()),
                Place.ROTTEN_EGGS,
                Place.DISPOSAL);
    }

    private static EntryForm counted() {
        return EntryForm.of(
                "eggs-counted",
                Shelf.EGGS,
                EggsCounted.class,
                asks -> List.of(asks.known().pens(Need.OPTIONAL), asks.known().speciesOfPen(), asks.eggs("eggs")),
                r -> new EggsCounted(r.nameOrNone("pen", PenName::new), r.species("species", "pen"), r.whole("eggs")),
                it -> new Written().name("pen", it.pen()).species(it.species()).whole("eggs", it.eggs()));
    }
}
