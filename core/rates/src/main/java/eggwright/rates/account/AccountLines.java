package eggwright.rates.account;

import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.Picture;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What became of the eggs of one set, load or pen.
 *
 * @param parcels the eggs set that it speaks of
 * @param lines counts that speak of these eggs alone, in the order in which fates happen; none of 0
 * @param countedWithOthers eggs whose fate is known only together with others'
 * @param fromOthers eggs of others in the lines, where the book contradicts itself; otherwise 0
 * @param together counts that speak of these and of other eggs together, whole: not to be added to the lines
 */
public record AccountLines(
        List<Parcel> parcels,
        List<AccountLine> lines,
        int countedWithOthers,
        int fromOthers,
        List<AccountLine> together) {
    public AccountLines {
        parcels = List.copyOf(parcels);
        lines = List.copyOf(lines);
        together = List.copyOf(together);
    }

    /** Empty where the book knows no such set. */
    public static AccountLines ofSet(Picture picture, SetName set) {
        return of(accounts(picture, set), p -> p.id().load().set().equals(set));
    }

    /** The eggs that were set in this load, wherever they were moved; empty where the book knows no such load. */
    public static AccountLines ofLoad(Picture picture, LoadRef load) {
        return of(accounts(picture, load.set()), p -> p.id().load().equals(load));
    }

    /** All eggs of a pen, over all sets. */
    public static AccountLines ofPen(Picture picture, PenName pen) {
        return of(picture.accounts(), p -> pen.equals(p.lot().pen()));
    }

    private static List<EggAccount> accounts(Picture picture, SetName set) {
        return picture.set(set).map(s -> List.of(s.account())).orElse(List.of());
    }

    private static AccountLines of(Collection<EggAccount> accounts, Predicate<Parcel> mine) {
        var parcels = new ArrayList<Parcel>();
        var alone = new EnumMap<Fate, Integer>(Fate.class);
        var together = new EnumMap<Fate, Integer>(Fate.class);
        int withOthers = 0;
        int fromOthers = 0;
        for (var account : accounts) {
            var here = account.parcels().values().stream().filter(mine).toList();
            var ids = here.stream().map(Parcel::id).collect(java.util.stream.Collectors.toSet());
            int more = -here.stream().mapToInt(Parcel::eggs).sum();
            for (var count : account.fates()) {
                if (ids.containsAll(count.of().ids())) {
                    alone.merge(count.fate(), count.eggs(), Integer::sum);
                    more += count.eggs();
                } else if (count.of().ids().stream().anyMatch(ids::contains)) {
                    together.merge(count.fate(), count.eggs(), Integer::sum);
                }
            }
            parcels.addAll(here);
            withOthers += Math.max(0, -more);
            fromOthers += Math.max(0, more);
        }
        return new AccountLines(parcels, lines(alone), withOthers, fromOthers, lines(together));
    }

    private static List<AccountLine> lines(Map<Fate, Integer> eggs) {
        return eggs.entrySet().stream()
                .map(e -> new AccountLine(e.getKey(), e.getValue()))
                .toList();
    }

    public int eggsSet() {
        return parcels.stream().mapToInt(Parcel::eggs).sum();
    }

    /** How these eggs would be expected to end by the first guesses of their species' profiles. */
    public ExpectedSplit expected(Function<Species, SpeciesProfile> profiles) {
        return ExpectedSplit.of(parcels, profiles);
    }

    /** How these eggs would be expected to stand after a look on this day of incubation, by the same first guesses. */
    public ExpectedSplit expectedBy(int day, Function<Species, SpeciesProfile> profiles) {
        return ExpectedSplit.by(day, parcels, profiles);
    }
}
