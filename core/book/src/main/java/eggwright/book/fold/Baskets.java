package eggwright.book.fold;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.Transferred;
import eggwright.book.name.BasketName;
import eggwright.book.name.EntryId;
import eggwright.book.name.SetName;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What went into each basket, and which notes count a basket without naming a set: these speak of whatever was in it. A
 * basket is used again every week, so they speak of its last filling.
 */
final class Baskets {
    /** A count of a basket speaks of what went into it in these last days. */
    private static final Duration REACH = Duration.ofDays(12);

    private final Map<BasketName, TreeSet<Effective>> into = new HashMap<>();
    private final Map<BasketName, TreeSet<Effective>> counts = new HashMap<>();

    void clear() {
        into.clear();
        counts.clear();
    }

    /** The parts that an entry touches, those that it reaches by a basket among them. */
    Set<Part> touchedBy(Effective now) {
        var parts = Touched.by(now.payload(), now.entry().origin());
        var basket = basketAlone(now);
        if (basket != null) {
            var sets = lastFilling(basket, now.instant());
            sets.forEach(set -> parts.add(new Part.Set(set)));
            if (sets.isEmpty()) {
                parts.add(new Part.UnknownBasket(basket));
            }
        }
        return parts;
    }

    private SortedSet<SetName> lastFilling(BasketName basket, Instant at) {
        var sets = new TreeSet<SetName>();
        var fillings = into.get(basket);
        if (fillings == null) {
            return sets;
        }
        var from = at.minus(REACH);
        for (var transfer : fillings.descendingSet()) {
            var filled = transfer.instant();
            if (filled.isAfter(at)) {
                continue;
            }
            if (filled.isBefore(from)) {
                break;
            }
            if (sets.isEmpty() && filled.minus(Sieve.BASKET_FILLED_WITHIN).isAfter(from)) {
                from = filled.minus(Sieve.BASKET_FILLED_WITHIN);
            }
            if (transfer.payload() instanceof Transferred it) {
                it.eggs().stream().filter(t -> basket.equals(t.basket())).forEach(t -> sets.add(t.set()));
            }
        }
        return sets;
    }

    /** Takes an entry in; gives the counts that may now speak of other eggs. */
    List<EntryId> add(Effective now) {
        var basket = basketAlone(now);
        if (basket != null) {
            counts.computeIfAbsent(basket, b -> new TreeSet<>()).add(now);
        }
        return filledBy(now).stream()
                .flatMap(b -> {
                    into.computeIfAbsent(b, x -> new TreeSet<>()).add(now);
                    return countsAfter(b, now).stream();
                })
                .toList();
    }

    /** Takes an entry out; gives the counts that may now speak of other eggs. */
    List<EntryId> remove(Effective was) {
        var basket = basketAlone(was);
        if (basket != null) {
            counts.getOrDefault(basket, new TreeSet<>()).remove(was);
        }
        return filledBy(was).stream()
                .flatMap(b -> {
                    into.getOrDefault(b, new TreeSet<>()).remove(was);
                    return countsAfter(b, was).stream();
                })
                .toList();
    }

    private static Set<BasketName> filledBy(Effective entry) {
        if (!(entry.payload() instanceof Transferred it)) {
            return Set.of();
        }
        var filled = new TreeSet<BasketName>();
        for (var part : it.eggs()) {
            if (part.basket() != null) {
                filled.add(part.basket());
            }
        }
        return filled;
    }

    private List<EntryId> countsAfter(BasketName basket, Effective transfer) {
        var found = new ArrayList<EntryId>();
        for (var count : counts.getOrDefault(basket, new TreeSet<>())) {
            if (!count.instant().isBefore(transfer.instant())
                    && !count.instant().isAfter(transfer.instant().plus(REACH))) {
                found.add(count.id());
            }
        }
        return found;
    }

    private static @Nullable BasketName basketAlone(Effective entry) {
        Scope scope = switch (entry.payload()) {
            case TakenOff it -> it.counted();
            case BrokenOut it -> it.scope();
            case Looked it -> it.scope();
            default -> null;
        };
        return scope != null && scope.set() == null ? scope.basket() : null;
    }
}
