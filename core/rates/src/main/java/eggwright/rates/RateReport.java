package eggwright.rates;

import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Picture;
import eggwright.stats.doublesampling.CorrectedShare;
import eggwright.stats.doublesampling.OpenedClears;
import eggwright.units.Rate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Fertility, hatch and losses of a book, by one dimension and in total. Definitions: {@code docs/definitions.md}. */
public record RateReport(List<GroupRates> groups, GroupRates total) {
    private static final Set<Fate> CLEAR = EnumSet.of(Fate.CLEAR_UNOPENED, Fate.INFERTILE);
    private static final Set<Fate> HATCH = EnumSet.of(Fate.SALEABLE);
    private static final Set<Fate> OF_FERTILE = EnumSet.of(Fate.CLEAR_UNOPENED, Fate.INFERTILE, Fate.SALEABLE);
    private static final Set<Fate> SHELL = EnumSet.of(Fate.SALEABLE, Fate.CULLED, Fate.DEAD_IN_BASKET);

    public RateReport {
        groups = List.copyOf(groups);
    }

    public static RateReport of(Picture picture, Dimension by) {
        return of(picture, picture.accounts(), by::key);
    }

    /** Rates of some accounts only, in one group. */
    public static GroupRates total(Picture picture, Collection<EggAccount> accounts) {
        return of(picture, accounts, any -> "all").total();
    }

    private static RateReport of(Picture picture, Collection<EggAccount> accounts, Function<Parcel, String> key) {
        var groups = work(picture, accounts, key);
        var total = work(picture, accounts, any -> "all");
        return new RateReport(groups, total.isEmpty() ? empty() : total.getFirst());
    }

    private static GroupRates empty() {
        var none = new Rate(0, 0);
        return new GroupRates("all", 0, Map.of(), 0, 0, Basis.APPARENT, none, none, null, none, none, none);
    }

    /** What one group gathers over all accounts. */
    private static final class Gathered {
        int eggsSet;
        int fromOthers;
        int alone;
        final Map<Fate, Integer> fates = new EnumMap<>(Fate.class);
        final Map<Fate, Integer> lamp = new EnumMap<>(Fate.class);
        Rate fertility = new Rate(0, 0);
        Rate apparent = new Rate(0, 0);
        Rate hatch = new Rate(0, 0);
        Rate ofFertile = new Rate(0, 0);
        Rate shell = new Rate(0, 0);
    }

    private static List<GroupRates> work(
            Picture picture, Collection<EggAccount> accounts, Function<Parcel, String> key) {
        var found = new TreeMap<String, Gathered>(Comparators.NATURAL);
        for (var account : accounts) {
            gather(picture, account, key, found);
        }
        return found.entrySet().stream()
                .map(g -> group(g.getKey(), g.getValue()))
                .toList();
    }

    private static void gather(
            Picture picture, EggAccount account, Function<Parcel, String> key, Map<String, Gathered> found) {
        var keys = new HashMap<ParcelId, String>();
        for (var parcel : account.parcels().values()) {
            keys.put(parcel.id(), key.apply(parcel));
            at(found, key.apply(parcel)).eggsSet += parcel.eggs();
        }
        for (var fate : account.fates()) {
            var names = names(fate, keys);
            var group = at(found, Closures.joint(names));
            group.fates.merge(fate.fate(), fate.eggs(), Integer::sum);
            if (names.size() > 1) {
                group.fromOthers += fate.eggs();
            } else {
                group.alone += fate.eggs();
            }
        }
        for (var fate : account.atTheLamp()) {
            at(found, Closures.joint(names(fate, keys))).lamp.merge(fate.fate(), fate.eggs(), Integer::sum);
        }
        var seen = seen(picture, account);
        var off = takenOff(account);
        Predicate<Parcel> looked = p -> seen.contains(p.id());
        Predicate<Parcel> finished = p -> off.contains(p.id());
        Closures.of(account, account.fates(), CLEAR, key, looked).forEach((name, sum) -> {
            var group = at(found, name);
            group.fertility = group.fertility.plus(
                    new Rate(sum.eggs - sum.of(Fate.CLEAR_UNOPENED) - sum.of(Fate.INFERTILE), sum.eggs));
        });
        Closures.of(account, account.atTheLamp(), CLEAR, key, looked).forEach((name, sum) -> {
            var group = at(found, name);
            group.apparent = group.apparent.plus(
                    new Rate(sum.eggs - sum.of(Fate.CLEAR_UNOPENED) - sum.of(Fate.INFERTILE), sum.eggs));
        });
        Closures.of(account, account.fates(), HATCH, key, finished).forEach((name, sum) -> {
            var group = at(found, name);
            group.hatch = group.hatch.plus(new Rate(sum.of(Fate.SALEABLE), sum.eggs));
        });
        Closures.of(account, account.fates(), SHELL, key, finished).forEach((name, sum) -> {
            var group = at(found, name);
            int chicks = sum.of(Fate.SALEABLE) + sum.of(Fate.CULLED) + sum.of(Fate.DEAD_IN_BASKET);
            group.shell = group.shell.plus(new Rate(chicks, sum.eggs));
        });
        Closures.of(account, account.fates(), OF_FERTILE, key, finished.and(looked))
                .forEach((name, sum) -> {
                    var group = at(found, name);
                    int fertile = sum.eggs - sum.of(Fate.CLEAR_UNOPENED) - sum.of(Fate.INFERTILE);
                    group.ofFertile = group.ofFertile.plus(new Rate(sum.of(Fate.SALEABLE), fertile));
                });
    }

    private static Set<String> names(FateCount fate, Map<ParcelId, String> keys) {
        var names = new TreeSet<String>();
        fate.of().forEach(id -> names.add(keys.getOrDefault(id, Dimension.NOT_RECORDED)));
        return names;
    }

    private static Gathered at(Map<String, Gathered> found, String key) {
        return found.computeIfAbsent(key, k -> new Gathered());
    }

    /** Parcels whose fertility was seen: their load was looked at whole, or eggs of theirs were opened. */
    private static Set<ParcelId> seen(Picture picture, EggAccount account) {
        var seen = new HashSet<ParcelId>();
        for (var id : account.parcels().keySet()) {
            if (picture.set(id.load().set())
                    .flatMap(s -> s.load(id.load().tray()))
                    .map(LoadPicture::wasLookedAt)
                    .orElse(false)) {
                seen.add(id);
            }
        }
        for (var fate : account.fates()) {
            if (fate.fate().sort() == FateSort.OPENED) {
                seen.addAll(fate.of().ids());
            }
        }
        return seen;
    }

    private static Set<ParcelId> takenOff(EggAccount account) {
        var off = new HashSet<>(account.parcels().keySet());
        for (var fate : account.fates()) {
            if (fate.fate().sort() == FateSort.STILL_IN) {
                fate.of().ids().forEach(off::remove);
            }
        }
        return off;
    }

    private static GroupRates group(String key, Gathered it) {
        int unopened = it.fates.getOrDefault(Fate.CLEAR_UNOPENED, 0);
        int lampClears = it.lamp.getOrDefault(Fate.CLEAR_UNOPENED, 0);
        int opened = Math.max(0, lampClears - unopened);
        int openedClasses = it.fates.entrySet().stream()
                .filter(f -> f.getKey().sort() == FateSort.OPENED)
                .mapToInt(Map.Entry::getValue)
                .sum();
        var basis = unopened == 0 && (opened > 0 || openedClasses > 0)
                ? Basis.OPENED
                : opened == 0 ? Basis.APPARENT : Basis.MIXED;
        return new GroupRates(
                key,
                it.eggsSet,
                it.fates,
                it.fromOthers > 0 && it.eggsSet == 0 ? 0 : it.eggsSet - it.alone,
                it.fromOthers,
                basis,
                it.fertility,
                it.apparent,
                corrected(it, lampClears, opened),
                it.hatch,
                it.ofFertile,
                it.shell);
    }

    private static @Nullable CorrectedShare corrected(Gathered it, int clears, int opened) {
        int infertile = Math.min(opened, it.fates.getOrDefault(Fate.INFERTILE, 0));
        int eggs = (int) it.apparent.of();
        return opened == 0 || clears > eggs || clears == 0
                ? null
                : new OpenedClears(eggs, clears, opened, infertile).fertileShare(0.95);
    }
}
