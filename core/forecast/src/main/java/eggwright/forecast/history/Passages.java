package eggwright.forecast.history;

import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SetPicture;
import eggwright.trade.Species;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Reads the passages out of the picture, at the grain at which people counted: a look at one tray is one tray, chicks
 * counted by set are one count of many trays. Sets whose eggs were pooled are followed as one, under the first name.
 */
public final class Passages {
    private Passages() {}

    /** In order of set day, then name. A set of several species gives one passage for the species with most eggs. */
    public static List<Passage> of(Picture picture) {
        var passages = new ArrayList<Passage>();
        for (var account : picture.accounts()) {
            var sets = picture.sets().values().stream()
                    .filter(s -> s.account().equals(account) && s.eggsSet() > 0)
                    .toList();
            if (!sets.isEmpty()) {
                passages.add(passage(sets, account));
            }
        }
        passages.sort(Comparator.comparing(Passage::setOn).thenComparing(Passage::set));
        return List.copyOf(passages);
    }

    private static Passage passage(List<SetPicture> sets, EggAccount account) {
        var loads = sets.stream().flatMap(s -> s.loads().values().stream()).toList();
        var first = sets.getFirst();
        var stages = new EnumMap<StageKind, List<Came>>(StageKind.class);
        looks(first.name(), loads, stages);
        var running = sets.stream().anyMatch(SetPicture::isRunning);
        var saleable = account.eggs(Fate.SALEABLE);
        if (!running) {
            hatch(first.name(), loads, account, takeOffDay(sets), stages);
        }
        return new Passage(
                first.name(),
                mainSpecies(account),
                first.setOn(),
                stages,
                running ? waiting(loads, account) : List.of(),
                running ? saleable : 0,
                running ? Passage.Progress.RUNNING : Passage.Progress.FINISHED,
                saleable,
                account.eggsSet());
    }

    private static int takeOffDay(List<SetPicture> sets) {
        int day = 0;
        for (var set : sets) {
            if (set.takenOffAt() != null) {
                day = Math.max(day, (int) ChronoUnit.DAYS.between(
                        sets.getFirst().setOn(), set.takenOffAt().toLocalDate()));
            }
        }
        return day;
    }

    private static Species mainSpecies(EggAccount account) {
        var eggs = new TreeMap<Species, Integer>();
        account.parcels().values().forEach(p -> eggs.merge(p.lot().species(), p.eggs(), Integer::sum));
        return eggs.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    /** A look at one load is one count; a look at the whole set stands in every load's list but is counted once. */
    private static void looks(SetName set, List<LoadPicture> loads, Map<StageKind, List<Came>> stages) {
        var counted = new HashSet<eggwright.book.name.EntryId>();
        for (var load : loads) {
            int since = 0;
            var kind = StageKind.SET_TO_FIRST_LOOK;
            for (var look : load.looks()) {
                var whole = look.look().lookedAt() == null;
                if (whole && counted.add(look.entry()) && look.inTheLoad() > 0) {
                    int trays = look.look().scope().tray() == null ? sharing(loads, look) : 1;
                    stages.computeIfAbsent(kind, k -> new ArrayList<>())
                            .add(new Came(
                                    set,
                                    look.inTheLoad(),
                                    Math.max(0, look.inTheLoad() - look.look().takenOut()),
                                    trays,
                                    since,
                                    Math.max(since, look.day()),
                                    pens(load.parcels())));
                }
                if (whole) {
                    since = Math.max(since, look.day());
                    kind = StageKind.LOOK_TO_LOOK;
                }
            }
        }
    }

    private static int sharing(List<LoadPicture> loads, LookTaken look) {
        return (int) loads.stream()
                .filter(l -> l.looks().stream().anyMatch(other -> other.entry().equals(look.entry())))
                .count();
    }

    private static void hatch(
            SetName set, List<LoadPicture> loads, EggAccount account, int day, Map<StageKind, List<Came>> stages) {
        var byLoad = new HashMap<LoadRef, int[]>();
        var apart = true;
        for (var fate : account.atTheLamp()) {
            var refs = loadsOf(fate);
            if (refs.size() > 1) {
                apart = false;
            }
            var ref = refs.iterator().next();
            var sums = byLoad.computeIfAbsent(ref, r -> new int[2]);
            if (fate.fate().sort() != FateSort.LAMP) {
                sums[0] += fate.eggs();
                if (fate.fate() == Fate.SALEABLE) {
                    sums[1] += fate.eggs();
                }
            }
        }
        int looked = lastLookDay(loads);
        var kind = looked > 0 ? StageKind.LAST_LOOK_TO_CHICK : StageKind.SET_TO_CHICK;
        var found = new ArrayList<Came>();
        if (apart) {
            for (var load : loads) {
                var sums = byLoad.getOrDefault(load.ref(), new int[2]);
                if (sums[0] > 0) {
                    found.add(new Came(set, sums[0], sums[1], 1, looked, Math.max(looked, day), pens(load.parcels())));
                }
            }
        } else {
            int of = byLoad.values().stream().mapToInt(s -> s[0]).sum();
            int through = byLoad.values().stream().mapToInt(s -> s[1]).sum();
            if (of > 0) {
                found.add(new Came(
                        set,
                        of,
                        through,
                        loads.size(),
                        looked,
                        Math.max(looked, day),
                        pens(account.parcels().values())));
            }
        }
        if (!found.isEmpty()) {
            stages.put(kind, found);
        }
    }

    private static int lastLookDay(List<LoadPicture> loads) {
        return loads.stream()
                .filter(l -> l.eggsSet() > 0)
                .flatMap(l -> l.looks().stream())
                .filter(l -> l.look().lookedAt() == null)
                .mapToInt(LookTaken::day)
                .max()
                .orElse(0);
    }

    private static Set<LoadRef> loadsOf(FateCount fate) {
        var refs = new HashSet<LoadRef>();
        fate.of().forEach(id -> refs.add(id.load()));
        return refs;
    }

    private static List<Passage.Waiting> waiting(List<LoadPicture> loads, EggAccount account) {
        var groups = new ArrayList<Passage.Waiting>();
        int toldApart = 0;
        int shared = 0;
        int sharedLook = 0;
        for (var load : loads) {
            if (load.phase() == LoadPhase.OUT) {
                continue;
            }
            int looked = load.looks().stream()
                    .filter(l -> l.look().lookedAt() == null)
                    .mapToInt(LookTaken::day)
                    .max()
                    .orElse(0);
            if (load.eggsNow() == null) {
                shared++;
                sharedLook = Math.max(sharedLook, looked);
            } else if (load.eggsNow() > 0) {
                toldApart += load.eggsNow();
                groups.add(new Passage.Waiting(load.eggsNow(), 1, Math.max(0, looked), pens(load.parcels())));
            }
        }
        int rest = account.eggs(Fate.IN_SETTER) + account.eggs(Fate.IN_HATCHER) - toldApart;
        if (rest > 0) {
            groups.add(new Passage.Waiting(
                    rest,
                    Math.max(1, shared),
                    Math.max(0, sharedLook),
                    pens(account.parcels().values())));
        }
        return groups;
    }

    private static Map<PenName, Double> pens(Collection<Parcel> parcels) {
        var eggs = new TreeMap<PenName, Integer>();
        int all = 0;
        for (var parcel : parcels) {
            all += parcel.eggs();
            if (parcel.lot().pen() != null) {
                eggs.merge(parcel.lot().pen(), parcel.eggs(), Integer::sum);
            }
        }
        var shares = new TreeMap<PenName, Double>();
        for (var pen : eggs.entrySet()) {
            shares.put(pen.getKey(), pen.getValue() / (double) all);
        }
        return shares;
    }
}
