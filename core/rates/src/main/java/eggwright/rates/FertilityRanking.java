package eggwright.rates;

import java.util.List;
import java.util.function.Predicate;

/**
 * Which fertility of several groups may be ranked. An apparent fertility is too low by the early deaths among its
 * clears, so it never stands in one row with one of opened clears uncorrected.
 */
public sealed interface FertilityRanking {
    /** All stand on the same basis: rank {@link GroupRates#fertility()}. */
    record AsCounted(Basis basis) implements FertilityRanking {}

    /** Clears were opened in every group, of some in part: rank {@link GroupRates#trueFertility()}. */
    record Corrected() implements FertilityRanking {}

    /** Some have no opened clears, but all were looked at: rank {@link GroupRates#apparentFertility()}. */
    record AtTheLamp() implements FertilityRanking {}

    /** No figure is the same thing in all groups. Rank nothing, or leave one side out. */
    record Not(List<String> neverOpened, List<String> neverLookedAt) implements FertilityRanking {
        public Not {
            neverOpened = List.copyOf(neverOpened);
            neverLookedAt = List.copyOf(neverLookedAt);
        }
    }

    /** Nobody saw the fertility of any of them. */
    record NothingSeen() implements FertilityRanking {}

    /** The figure that the given groups have in common; groups of unseen fertility say nothing. */
    static FertilityRanking of(List<GroupRates> groups) {
        var seen = groups.stream().filter(g -> !g.fertility().isEmpty()).toList();
        if (seen.isEmpty()) {
            return new NothingSeen();
        }
        var bases = seen.stream().map(GroupRates::basis).distinct().toList();
        if (bases.size() == 1 && bases.getFirst() != Basis.MIXED) {
            return new AsCounted(bases.getFirst());
        }
        var neverOpened = keys(seen, g -> g.basis() == Basis.APPARENT);
        if (neverOpened.isEmpty()) {
            return new Corrected();
        }
        var neverLookedAt = keys(seen, g -> g.apparentFertility().isEmpty());
        return neverLookedAt.isEmpty() ? new AtTheLamp() : new Not(neverOpened, neverLookedAt);
    }

    private static List<String> keys(List<GroupRates> groups, Predicate<GroupRates> which) {
        return groups.stream().filter(which).map(GroupRates::key).toList();
    }
}
