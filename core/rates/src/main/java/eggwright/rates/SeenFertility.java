package eggwright.rates;

import eggwright.book.picture.Fate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Of which eggs of an account fertility was seen. Rules, as {@code docs/definitions.md} states them: eggs that a look at
 * a whole load had before it; eggs of a look at a part, of which the largest look counts; and all eggs of what is taken
 * off and was broken out, looked at or not. Nothing is known of a load that was neither.
 */
final class SeenFertility {
    private static final Set<Fate> NOT_FERTILE =
            java.util.Collections.unmodifiableSet(EnumSet.of(Fate.CLEAR_UNOPENED, Fate.INFERTILE));

    private final NumberedAccount account;
    private final int[] seen;
    private final Ties ties;
    private final List<Closure> closures;
    private final int[] clears;

    SeenFertility(NumberedAccount account) {
        this.account = account;
        seen = account.looked.clone();
        for (int i = 0; i < seen.length; i++) {
            if (account.finished[i] && account.opened[i]) {
                seen[i] = account.eggs[i];
            }
        }
        ties = tiedByPartLooks(account);
        var clearsAtLamp = account.lamp.getOrDefault(Fate.CLEAR_UNOPENED, List.of());
        for (var count : clearsAtLamp) {
            // So that the clears that were opened are known of the same eggs as those that were not.
            ties.tie(count.of());
        }
        closures = Closure.of(account, ties, account.byFate, NOT_FERTILE);
        clears = new int[seen.length];
        for (var count : clearsAtLamp) {
            clears[ties.rootOf(count.of()[0])] += count.eggs();
        }
    }

    static Ties tiedByPartLooks(NumberedAccount account) {
        var ties = Ties.none(account.parcels());
        account.partLooks.forEach(look -> ties.tie(look.of()));
        return ties;
    }

    /** Parcels tied by what decides fertility. */
    List<Closure> closures() {
        return closures;
    }

    /** Parcels tied by what decides fertility, and by one fate more. */
    List<Closure> closuresWith(Fate more) {
        if (!account.has(more)) {
            return closures;
        }
        var deciding = EnumSet.copyOf(NOT_FERTILE);
        deciding.add(more);
        return Closure.of(account, ties.copy(), account.byFate, deciding);
    }

    /** Eggs of a closure whose fertility was seen; never fewer than were found not to be fertile. */
    int seen(Closure closure) {
        int most = looked(account, closure, seen);
        return most == 0
                ? 0
                : Math.min(closure.eggs, Math.max(most, closure.of(Fate.CLEAR_UNOPENED) + closure.of(Fate.INFERTILE)));
    }

    boolean seenWhole(Closure closure) {
        return closure.all(i -> seen[i] == account.eggs[i]);
    }

    /** Clears at the lamp, opened since or not. */
    int clearsAtLamp(Closure closure) {
        return clears[ties.rootOf(closure.first())];
    }

    /** Eggs of a closure that were looked at: what whole looks had, or the largest look at a part, if that is more. */
    static int looked(NumberedAccount account, Closure closure, int[] whole) {
        int most = closure.sum(whole);
        if (most < closure.eggs && !account.partLooks.isEmpty()) {
            for (var look : account.partLooks) {
                if (closure.holds(look.of()[0])) {
                    most = Math.max(most, look.eggs());
                }
            }
        }
        return Math.min(most, closure.eggs);
    }
}
