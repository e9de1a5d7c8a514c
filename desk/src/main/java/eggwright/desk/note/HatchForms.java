package eggwright.desk.note;

import eggwright.book.entry.MachineKind;
import eggwright.book.entry.Pull;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.TransferOf;
import eggwright.book.entry.Transferred;
import eggwright.book.name.BasketName;
import eggwright.book.name.MachineName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.desk.form.Field.Need;
import eggwright.trade.caution.Place;
import java.util.ArrayList;
import java.util.List;

/** From setter to hatcher, and chicks off. */
final class HatchForms {
    static final List<EntryForm> ALL = List.of(transferred(), takenOff());

    private HatchForms() {}

    private static EntryForm transferred() {
        return EntryForm.of(
                "transferred",
                Shelf.HATCH,
                Transferred.class,
                asks -> List.of(
                        asks.known().machines("hatcher", MachineKind.HATCHER, Need.OPTIONAL),
                        asks.known()
                                .transferRows(List.of(
                                        asks.bare(asks.known().sets("set")),
                                        asks.plain("tray"),
                                        asks.plainEggs("eggs").optional(),
                                        asks.plain("basket").optional()))),
                r -> {
                    var parts = new ArrayList<TransferOf>();
                    for (var row : r.rows("load")) {
                        if (row.isEmpty("tray") && row.isEmpty("eggs") && row.isEmpty("basket")) {
                            // Only the set was offered; the row was not used.
                            continue;
                        }
                        parts.add(new TransferOf(
                                row.name("set", SetName::new),
                                row.name("tray", TrayName::new),
                                row.wholeOrNone("eggs"),
                                row.nameOrNone("basket", BasketName::new)));
                    }
                    if (parts.isEmpty()) {
                        r.mend("load", "transfer.noTrays");
                        parts.add(new TransferOf(new SetName("?"), new TrayName("?"), null, null));
                    }
                    return new Transferred(r.nameOrNone("hatcher", MachineName::new), parts);
                },
                it -> {
                    var written = new Written().name("hatcher", it.hatcher());
                    for (int i = 0; i < it.eggs().size(); i++) {
                        var part = it.eggs().get(i);
                        var at = "load." + i + ".";
                        written.name(at + "set", part.set())
                                .name(at + "tray", part.tray())
                                .whole(at + "eggs", part.eggs())
                                .name(at + "basket", part.basket());
                    }
                    return written;
                },
                Place.ROTTEN_EGGS,
                Place.DUST,
                Place.CURRENT_AND_WATER);
    }

    private static EntryForm takenOff() {
        return EntryForm.of(
                "taken-off",
                Shelf.HATCH,
                TakenOff.class,
                asks -> List.of(
                        asks.known().sets("set"),
                        asks.choice("pull", Pull.class, Pull.LAST),
                        asks.whole("saleable", "chicks"),
                        asks.whole("culled", "chicks").optional(),
                        asks.whole("dead_in_basket", "chicks").optional(),
                        asks.eggs("pipped_alive_left").optional(),
                        asks.fold(
                                "grain",
                                asks.known().tray("tray", "set").optional(),
                                asks.known().pens(Need.OPTIONAL),
                                asks.text("basket").optional())),
                r -> new TakenOff(
                        Scopes.read(r),
                        r.choice("pull", Pull.class),
                        r.whole("saleable"),
                        r.wholeOrNought("culled"),
                        r.wholeOrNought("dead_in_basket"),
                        r.wholeOrNought("pipped_alive_left")),
                it -> Scopes.write(new Written(), it.counted())
                        .choice("pull", it.pull())
                        .whole("saleable", it.saleable())
                        .whole("culled", it.culled())
                        .whole("dead_in_basket", it.deadInBasket())
                        .whole("pipped_alive_left", it.pippedAliveLeft()),
                Place.DUST,
                Place.HUMANE_KILLING,
                Place.ZOONOSES);
    }
}
