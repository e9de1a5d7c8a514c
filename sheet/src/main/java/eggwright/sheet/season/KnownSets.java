package eggwright.sheet.season;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Remarked;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.Transferred;
import eggwright.book.entry.Withdrawn;
import eggwright.book.name.EntryId;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.wire.DerivedIds;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the book holds of the sets of a file. Imported entries count as they first came, mended or not: a row that a
 * person mended in the book is still the row that was imported. Settings noted by hand count unless withdrawn.
 */
final class KnownSets {
    private final Map<SetName, KnownSet> sets = new HashMap<>();

    KnownSets(Collection<Kept> book) {
        Set<EntryId> withdrawn = new HashSet<>();
        for (var kept : book) {
            if (kept.entry().payload() instanceof Withdrawn it) {
                withdrawn.add(it.target());
            }
        }
        for (var kept : book) {
            take(kept.entry(), withdrawn);
        }
    }

    KnownSet of(SetName set) {
        return sets.computeIfAbsent(set, KnownSet::new);
    }

    private void take(Entry entry, Set<EntryId> withdrawn) {
        if (entry.origin() == Origin.NOTED) {
            if (entry.payload() instanceof EggsSet it && !withdrawn.contains(entry.id())) {
                of(it.set()).addNoted(entry);
            }
            return;
        }
        switch (entry.payload()) {
            case EggsSet it -> of(it.set()).add(it.loads().getFirst().tray(), entry);
            case Looked it -> take(entry, it.scope());
            case TakenOff it -> take(entry, it.counted());
            case BrokenOut it -> take(entry, it.scope());
            case Remarked it -> take(entry, it.about());
            case Transferred it -> {
                var first = it.eggs().getFirst();
                var ofTray = DerivedIds.of(entry.farm(), first.set(), first.tray(), it)
                        .equals(entry.id());
                take(entry, first.set(), ofTray ? first.tray() : SeasonRow.ALL);
            }
            default -> {
                // No row gives another kind.
            }
        }
    }

    private void take(Entry entry, @Nullable Scope scope) {
        if (scope != null && scope.set() != null) {
            take(entry, scope.set(), scope.tray() == null ? SeasonRow.ALL : scope.tray());
        }
    }

    private void take(Entry entry, SetName set, TrayName tray) {
        of(set).add(tray, entry);
    }
}
