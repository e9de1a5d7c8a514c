package eggwright.rates;

import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.Picture;
import eggwright.trade.Stage;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Fertility, hatch and losses of a book, by one dimension and in total. Definitions: {@code docs/definitions.md}.
 *
 * @param groups in natural order of their keys, joint groups among them
 * @param total everything together, under the key {@link Dimension#ALL}
 */
public record RateReport(List<GroupRates> groups, GroupRates total) {
    /** Fates that leave it open whether the egg was fertile. */
    static final Set<Fate> UNDETERMINED = java.util.Collections.unmodifiableSet(
            EnumSet.of(Fate.CRACKED, Fate.ROT, Fate.REMOVED_UNSORTED, Fate.UNACCOUNTED));

    private static final Map<Stage, Fate> FATES = fates();

    public RateReport {
        groups = List.copyOf(groups);
    }

    /** Rates of the whole book. */
    public static RateReport of(Picture picture, Dimension by) {
        return of(picture, picture.accounts(), by);
    }

    /** Rates of some accounts only. */
    public static RateReport of(Picture picture, Collection<EggAccount> accounts, Dimension by) {
        var gathering = Gathering.of(accounts, by.keys(picture));
        return new RateReport(
                gathering.groups().stream().map(GroupSum::rates).toList(),
                gathering.total().rates());
    }

    /** Rates of some accounts only, in one group. */
    public static GroupRates total(Picture picture, Collection<EggAccount> accounts) {
        return of(picture, accounts, Dimension.NONE).total();
    }

    /** Which fertility of these groups may be ranked. */
    public FertilityRanking ranking() {
        return FertilityRanking.of(groups);
    }

    static Fate fate(Stage stage) {
        var fate = FATES.get(stage);
        if (fate == null) {
            throw new IllegalStateException("No fate is called " + stage.word());
        }
        return fate;
    }

    private static Map<Stage, Fate> fates() {
        var found = new EnumMap<Stage, Fate>(Stage.class);
        for (var stage : Stage.values()) {
            Arrays.stream(Fate.values())
                    .filter(f -> f.word().equals(stage.word()))
                    .findFirst()
                    .ifPresent(fate -> found.put(stage, fate));
        }
        return java.util.Collections.unmodifiableMap(found);
    }
}
