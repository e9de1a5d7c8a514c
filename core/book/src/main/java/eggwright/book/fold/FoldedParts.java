package eggwright.book.fold;

import eggwright.book.entry.SensorAt;
import eggwright.book.name.BasketName;
import eggwright.book.name.MachineName;
import eggwright.book.name.OrderNumber;
import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.FarmPicture;
import eggwright.book.picture.MachinePicture;
import eggwright.book.picture.OrderPicture;
import eggwright.book.picture.PenPicture;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SensorPicture;
import eggwright.book.picture.SetPicture;
import eggwright.book.picture.ShelfKey;
import eggwright.book.picture.ShelfPicture;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/** The parts of the picture other than sets, as last folded. */
final class FoldedParts {
    private static final String THE_FARM = "";

    private final Parts<PenName, PenPicture> pens = new Parts<>(PenFold::new);
    private final Parts<ShelfKey, ShelfPicture> shelves = new Parts<>(ShelfFold::new);
    private final Parts<MachineName, MachinePicture> machines = new Parts<>(MachineFold::new);
    private final Parts<OrderNumber, OrderPicture> orders = new Parts<>(OrderFold::new);
    private final Parts<BasketName, BasketName> unknownBaskets = new Parts<>(UnknownBasketFold::new);
    private final Parts<SensorAt, SensorPicture> sensors = new Parts<>(SensorFold::new);
    private final Parts<String, FarmPicture> farm = new Parts<>(farm -> new FarmFold());

    void refold(Part part, Run run) {
        switch (part) {
            case Part.Farm it -> farm.refold(THE_FARM, run);
            case Part.Pen it -> pens.refold(it.pen(), run);
            case Part.Shelf it -> shelves.refold(it.key(), run);
            case Part.Machine it -> machines.refold(it.machine(), run);
            case Part.Order it -> orders.refold(it.order(), run);
            case Part.UnknownBasket it -> unknownBaskets.refold(it.basket(), run);
            case Part.Sensor it -> sensors.refold(it.sensor(), run);
            case Part.Set it -> {
                // Sets are folded in groups, by the ledger.
            }
        }
    }

    List<Discrepancy> discrepancies() {
        var found = new ArrayList<Discrepancy>();
        pens.addDiscrepancies(found);
        shelves.addDiscrepancies(found);
        orders.addDiscrepancies(found);
        unknownBaskets.addDiscrepancies(found);
        farm.addDiscrepancies(found);
        return found;
    }

    Picture picture(
            SortedMap<SetName, SetPicture> sets,
            List<EggAccount> accounts,
            List<Discrepancy> discrepancies,
            int entryCount) {
        var known = farm.pictures().get(THE_FARM);
        return new Picture(
                known == null ? new FarmFold().folded().picture() : known,
                pens.pictures(),
                shelves.pictures(),
                machines.pictures(),
                sensors.pictures(),
                sets,
                accounts,
                orders.pictures(),
                discrepancies,
                entryCount);
    }
}
