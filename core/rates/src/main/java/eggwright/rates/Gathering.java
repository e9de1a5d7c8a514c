package eggwright.rates;

import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.Parcel;
import eggwright.trade.Stage;
import eggwright.units.Rate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;

/** Adds up accounts by key. Each metric is worked out over its own closures, so that each parts the eggs. */
final class Gathering {
    private static final Set<Fate> CLEAR = EnumSet.of(Fate.CLEAR_UNOPENED);
    private static final Set<Fate> SALEABLE = EnumSet.of(Fate.SALEABLE);
    private static final Set<Fate> OUT_OF_SHELL = EnumSet.of(Fate.SALEABLE, Fate.CULLED, Fate.DEAD_IN_BASKET);

    private final Map<String, GroupSum> groups = new HashMap<>();
    private final GroupSum total = new GroupSum(List.of(Dimension.ALL));

    private Gathering() {}

    static Gathering of(Collection<EggAccount> accounts, Function<Parcel, String> key) {
        var gathering = new Gathering();
        for (var account : accounts) {
            gathering.add(NumberedAccount.of(account, key));
        }
        return gathering;
    }

    List<GroupSum> groups() {
        var sorted = new TreeMap<String, GroupSum>(Keys.NATURAL);
        sorted.putAll(groups);
        return List.copyOf(sorted.values());
    }

    GroupSum total() {
        return total;
    }

    private void add(NumberedAccount account) {
        addFates(account);
        var fertility = new SeenFertility(account);
        addFertility(account, fertility);
        addApparent(account);
        addHatch(account, fertility);
        addLosses(account, fertility);
    }

    private GroupSum group(List<String> keys) {
        return groups.computeIfAbsent(Keys.joined(keys), k -> new GroupSum(keys));
    }

    private void both(List<String> keys, Consumer<GroupSum> what) {
        what.accept(group(keys));
        what.accept(total);
    }

    private void both(NumberedAccount account, Closure closure, Consumer<GroupSum> what) {
        what.accept(closure.hasOneKey(account) ? alone(account, closure.first()) : group(closure.keys(account)));
        what.accept(total);
    }

    /** The group of one parcel. */
    private GroupSum alone(NumberedAccount account, int parcel) {
        var key = account.keys[parcel];
        return groups.computeIfAbsent(key, k -> new GroupSum(List.of(key)));
    }

    private void addFates(NumberedAccount account) {
        var set = new HashMap<GroupSum, Integer>();
        var known = new HashMap<GroupSum, Integer>();
        for (int i = 0; i < account.parcels(); i++) {
            int eggs = account.eggs[i];
            both(List.of(account.keys[i]), g -> {
                g.eggsSet += eggs;
                set.merge(g, eggs, Integer::sum);
            });
        }
        for (var count : account.fates) {
            both(Closure.keys(account, count.of(), count.of().length), g -> {
                g.fates.merge(count.fate(), count.eggs(), Integer::sum);
                known.merge(g, count.eggs(), Integer::sum);
            });
        }
        // What a group has more of fates than of eggs are others' eggs, and the other way about.
        set.forEach((g, eggs) -> known.merge(g, -eggs, Integer::sum));
        known.forEach((g, more) -> {
            g.fromOthers += Math.max(0, more);
            g.countedWithOthers += Math.max(0, -more);
        });
    }

    private void addFertility(NumberedAccount account, SeenFertility fertility) {
        for (var closure : fertility.closures()) {
            int seen = fertility.seen(closure);
            int not = closure.counted();
            if (seen == 0) {
                continue;
            }
            int clears = fertility.clearsAtLamp(closure);
            int openedClears = clears - closure.of(Fate.CLEAR_UNOPENED);
            // Found infertile though the lamp had not called it clear: a clear that was opened, all the same.
            int missed = Math.max(0, closure.of(Fate.INFERTILE) - openedClears);
            both(account, closure, g -> {
                g.fertility.add(seen - not, seen);
                g.fertilityUnits.add(new Rate(seen - not, seen));
                g.unopened += closure.of(Fate.CLEAR_UNOPENED);
                g.clears += clears + missed;
                g.clearsAtLamp += clears;
                g.clearsOpened += openedClears + missed;
                g.infertileOpened += closure.of(Fate.INFERTILE);
                g.anyOpened |= closure.any(i -> account.opened[i]);
            });
        }
        addUndetermined(account, fertility);
    }

    /** Each count once for each group that it may concern. */
    private void addUndetermined(NumberedAccount account, SeenFertility fertility) {
        var groupOf = new GroupSum[account.parcels()];
        for (var closure : fertility.closures()) {
            if (fertility.seen(closure) > 0) {
                for (int i : closure.members()) {
                    groupOf[i] = group(closure.keys(account));
                }
            }
        }
        for (var fate : RateReport.UNDETERMINED) {
            for (var count : account.byFate.getOrDefault(fate, List.of())) {
                var may = new HashMap<GroupSum, Integer>();
                for (int i : count.of()) {
                    var group = groupOf[i];
                    if (group != null) {
                        may.merge(group, account.eggs[i], Integer::sum);
                        may.merge(total, account.eggs[i], Integer::sum);
                    }
                }
                may.forEach((g, eggs) -> g.undeterminedAtMost += Math.min(eggs, count.eggs()));
            }
        }
    }

    private void addApparent(NumberedAccount account) {
        var ties = SeenFertility.tiedByPartLooks(account);
        for (var closure : Closure.of(account, ties, account.lamp, CLEAR)) {
            int seen = Math.max(SeenFertility.looked(account, closure, account.looked), closure.counted());
            if (seen > 0) {
                both(account, closure, g -> {
                    g.apparent.add(seen - closure.counted(), seen);
                    g.apparentUnits.add(new Rate(seen - closure.counted(), seen));
                });
            }
        }
    }

    private void addHatch(NumberedAccount account, SeenFertility fertility) {
        for (var closure : Closure.of(account, Ties.none(account.parcels()), account.byFate, SALEABLE)) {
            if (closure.all(i -> account.finished[i])) {
                both(account, closure, g -> g.hatchOfSet.add(closure.counted(), closure.eggs));
            }
        }
        for (var closure : Closure.of(account, Ties.none(account.parcels()), account.byFate, OUT_OF_SHELL)) {
            if (closure.all(i -> account.finished[i])) {
                both(account, closure, g -> {
                    g.chicksOfSet.add(closure.counted(), closure.eggs);
                    g.saleableShare.add(closure.of(Fate.SALEABLE), closure.counted());
                });
            }
        }
        for (var closure : fertility.closuresWith(Fate.SALEABLE)) {
            if (fertility.seenWhole(closure) && closure.all(i -> account.finished[i])) {
                both(account, closure, g -> {
                    var rate = new Rate(closure.of(Fate.SALEABLE), fertile(closure));
                    g.hatchOfFertile.add(rate.count(), rate.of());
                    g.hatchOfFertileUnits.add(rate);
                });
            }
        }
    }

    /** Losses that an account has none of share the same eggs: these are added up once. */
    private void addLosses(NumberedAccount account, SeenFertility fertility) {
        var set = new HashMap<GroupSum, Integer>();
        for (int i = 0; i < account.parcels(); i++) {
            set.merge(alone(account, i), account.eggs[i], Integer::sum);
            set.merge(total, account.eggs[i], Integer::sum);
        }
        var fertile = new HashMap<GroupSum, Integer>();
        for (var closure : fertility.closures()) {
            if (fertility.seenWhole(closure)) {
                both(account, closure, g -> fertile.merge(g, fertile(closure), Integer::sum));
            }
        }
        for (var stage : Stage.losses()) {
            var fate = RateReport.fate(stage);
            if (account.has(fate)) {
                addLoss(account, fertility, stage, fate);
            } else {
                set.forEach((g, eggs) -> g.ofSet(stage).add(0, eggs));
                fertile.forEach((g, eggs) -> g.ofFertile(stage).add(0, eggs));
            }
        }
    }

    private void addLoss(NumberedAccount account, SeenFertility fertility, Stage stage, Fate fate) {
        for (var closure : Closure.of(account, Ties.none(account.parcels()), account.byFate, EnumSet.of(fate))) {
            both(account, closure, g -> g.ofSet(stage).add(closure.counted(), closure.eggs));
        }
        for (var closure : fertility.closuresWith(fate)) {
            if (fertility.seenWhole(closure)) {
                both(account, closure, g -> g.ofFertile(stage).add(closure.of(fate), fertile(closure)));
            }
        }
    }

    private static int fertile(Closure closure) {
        return closure.eggs - closure.of(Fate.CLEAR_UNOPENED) - closure.of(Fate.INFERTILE);
    }
}
