package eggwright.desk.people;

import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.ChicksOrdered;
import eggwright.book.entry.ChicksSold;
import eggwright.book.entry.EggsSold;
import eggwright.book.entry.Payload;
import eggwright.book.fold.Effective;
import eggwright.book.name.BuyerNumber;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** In how many notes each buyer's number stands. */
final class BuyerUse {
    private BuyerUse() {}

    static SortedMap<BuyerNumber, Integer> of(List<Effective> entries) {
        var use = new TreeMap<BuyerNumber, Integer>();
        for (var entry : entries) {
            var buyer = buyer(entry.payload());
            if (buyer != null) {
                use.merge(buyer, 1, Integer::sum);
            }
        }
        return use;
    }

    /** Absent where the note names no buyer. */
    private static @Nullable BuyerNumber buyer(Payload payload) {
        if (payload instanceof EggsSold it) {
            return it.buyer();
        }
        if (payload instanceof ChicksSold it) {
            return it.buyer();
        }
        if (payload instanceof ChicksOrdered it) {
            return it.buyer();
        }
        return payload instanceof ChicksDelivered it ? it.buyer() : null;
    }
}
