package eggwright.book.fold;

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
import eggwright.book.picture.SetPicture;
import eggwright.book.picture.ShelfKey;
import eggwright.book.picture.ShelfPicture;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/** The parts of the picture other than sets, as last folded. */
final class FoldedParts {
    private final SortedMap<PenName, Folded<PenPicture>> pens = new TreeMap<>();
    private final SortedMap<ShelfKey, Folded<ShelfPicture>> shelves = new TreeMap<>();
    private final SortedMap<MachineName, Folded<MachinePicture>> machines = new TreeMap<>();
    private final SortedMap<OrderNumber, Folded<OrderPicture>> orders = new TreeMap<>();
    private Folded<FarmPicture> farm = FarmFold.fold(List.of());

    void refold(Part part, SortedSet<Effective> entries) {
        switch (part) {
            case Part.Farm farmPart -> farm = FarmFold.fold(entries);
            case Part.Pen it -> put(pens, it.pen(), entries, () -> PenFold.fold(it.pen(), entries));
            case Part.Shelf it -> put(shelves, it.key(), entries, () -> ShelfFold.fold(it.key(), entries));
            case Part.Machine it -> put(machines, it.machine(), entries, () -> MachineFold.fold(it.machine(), entries));
            case Part.Order it -> put(orders, it.order(), entries, () -> OrderFold.fold(it.order(), entries));
            case Part.Set it -> {
                // Sets are folded in groups, by the ledger.
            }
        }
    }

    private static <K, V> void put(
            SortedMap<K, Folded<V>> parts,
            K key,
            SortedSet<Effective> entries,
            java.util.function.Supplier<Folded<V>> fold) {
        if (entries.isEmpty()) {
            parts.remove(key);
        } else {
            parts.put(key, fold.get());
        }
    }

    List<Discrepancy> discrepancies() {
        var found = new ArrayList<Discrepancy>();
        pens.values().forEach(p -> found.addAll(p.discrepancies()));
        shelves.values().forEach(p -> found.addAll(p.discrepancies()));
        orders.values().forEach(p -> found.addAll(p.discrepancies()));
        return found;
    }

    Picture picture(
            SortedMap<SetName, SetPicture> sets,
            List<EggAccount> accounts,
            List<Discrepancy> discrepancies,
            int entryCount) {
        return new Picture(
                farm.picture(),
                pictures(pens),
                pictures(shelves),
                pictures(machines),
                sets,
                accounts,
                pictures(orders),
                discrepancies,
                entryCount);
    }

    private static <K, V> SortedMap<K, V> pictures(SortedMap<K, Folded<V>> parts) {
        var pictures = new TreeMap<K, V>(parts.comparator());
        parts.forEach((key, part) -> pictures.put(key, part.picture()));
        return Collections.unmodifiableSortedMap(pictures);
    }
}
