package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.entry.TransferOf;
import eggwright.book.entry.Transferred;
import eggwright.book.name.BasketName;
import eggwright.book.picture.Discrepancy.What;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Loads that went into baskets of the hatcher. */
final class Transferring {
    private final Loads loads;
    private final Pools pools;
    private final Doubts doubts;

    Transferring(Loads loads, Pools pools, Doubts doubts) {
        this.loads = loads;
        this.pools = pools;
        this.doubts = doubts;
    }

    void transfer(Effective entry, Transferred it) {
        var parts = new LinkedHashMap<LoadRef, List<TransferOf>>();
        for (var part : it.eggs()) {
            parts.computeIfAbsent(new LoadRef(part.set(), part.tray()), r -> new ArrayList<>())
                    .add(part);
        }
        for (var load : parts.entrySet()) {
            var scope = Scope.ofLoad(load.getKey().set(), load.getKey().tray());
            var named = loads.named(entry, scope);
            if (!named.isEmpty()) {
                arrive(entry, it, named.getFirst(), load.getValue());
                transfer(entry, scope, load.getValue(), Loads.day(named.getFirst(), entry));
            }
        }
    }

    private static void arrive(Effective entry, Transferred it, LoadState load, List<TransferOf> parts) {
        if (load.transferredAt == null) {
            load.transferredAt = entry.instant();
        }
        load.baskets.addAll(baskets(parts));
        if (it.hatcher() != null) {
            load.places.add(new Place(entry.instant(), it.hatcher(), null, null));
        }
    }

    private static SortedSet<BasketName> baskets(List<TransferOf> parts) {
        var baskets = new TreeSet<BasketName>();
        for (var part : parts) {
            if (part.basket() != null) {
                baskets.add(part.basket());
            }
        }
        return baskets;
    }

    /** One load into its baskets: what was counted first; the rest into the others, of which only the sum is known. */
    private void transfer(Effective entry, Scope load, List<TransferOf> parts, int day) {
        var counted = parts.stream().filter(t -> t.eggs() != null).toList();
        var uncounted = parts.stream().filter(t -> t.eggs() == null).toList();
        int left = counted.size();
        int sum = 0;
        int held = pools.most(pools.inSetter(load));
        for (var part : counted) {
            int eggs = part.eggs() == null ? 0 : part.eggs();
            sum += eggs;
            left--;
            var meant = pools.inSetter(load);
            int there = pools.most(meant);
            var isLast = left == 0 && uncounted.isEmpty();
            if (isLast && eggs <= there && eggs >= pools.least(meant)) {
                pools.transferCounted(meant, eggs, baskets(List.of(part)), entry.instant());
            } else {
                pools.transfer(meant, Math.min(eggs, there), baskets(List.of(part)), entry.instant());
            }
        }
        pools.closePulled(entry.id(), day);
        if (!uncounted.isEmpty()) {
            pools.transferAll(pools.inSetter(load), baskets(uncounted), entry.instant());
        }
        if (sum > held) {
            doubts.add(DiscrepancyKind.MORE_OUT_THAN_IN, entry, load, sum, held, What.Gone.TRANSFERRED);
        } else if (uncounted.isEmpty() && pools.least(pools.inSetter(load)) > 0) {
            doubts.add(DiscrepancyKind.LEFT_AT_TRANSFER, entry, load, sum, held);
        }
    }
}
