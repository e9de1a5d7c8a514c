package eggwright.book.fold;

import eggwright.book.picture.Discrepancy;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** Parts of one sort, as last folded. */
final class Parts<K extends Comparable<K>, V> {
    private record Kept<V>(PartFold<V> fold, Folded<V> folded) {}

    private final Function<K, PartFold<V>> afresh;
    private final TreeMap<K, Kept<V>> kept = new TreeMap<>();

    Parts(Function<K, PartFold<V>> afresh) {
        this.afresh = afresh;
    }

    void refold(K key, Run run) {
        if (run.isEmpty()) {
            kept.remove(key);
            return;
        }
        int from = run.folded();
        var before = kept.get(key);
        var fold = before == null || from == 0 ? afresh.apply(key) : before.fold();
        var entries = run.inOrder();
        for (int i = before == null ? 0 : from; i < entries.size(); i++) {
            fold.take(entries.get(i));
        }
        run.allFolded();
        kept.put(key, new Kept<>(fold, fold.folded()));
    }

    void addDiscrepancies(List<Discrepancy> to) {
        kept.values().forEach(part -> to.addAll(part.folded().discrepancies()));
    }

    SortedMap<K, V> pictures() {
        var pictures = new TreeMap<K, V>();
        kept.forEach((key, part) -> pictures.put(key, part.folded().picture()));
        return Collections.unmodifiableSortedMap(pictures);
    }
}
