package eggwright.forecast.history;

import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
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
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reads the passages out of the picture, at the grain at which people counted: a look at one tray is one tray, chicks
 * counted by set are one count of many trays. Sets whose eggs were pooled are followed as one, under the first name.
 */
public final class Passages {
    private Passages() {}

    /** In order of set day, then name. */
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
        var species = mostOf(account.parcels().values()).orElseThrow();
        looks(first.name(), species, loads, stages);
        var running = sets.stream().anyMatch(SetPicture::isRunning);
        var saleable = account.eggs(Fate.SALEABLE);
        if (!running) {
            hatch(first.name(), species, loads, account, takeOffDay(sets), stages);
        }
        return new Passage(
                first.name(),
                species,
                first.setOn(),
                stages,
                running ? waiting(species, loads, account) : List.of(),
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

    /** The species of most of the eggs; none for a tray that was filled only by pooling. */
    private static Optional<Species> mostOf(Collection<Parcel> parcels) {
        var eggs = new TreeMap<Species, Integer>();
        parcels.forEach(p -> eggs.merge(p.lot().species(), p.eggs(), Integer::sum));
        return eggs.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    /** A look at one load is one count; a look at the whole set stands in every load's list but is counted once. */
    private static void looks(SetName set, Species main, List<LoadPicture> loads, Map<StageKind, List<Came>> stages) {
        var counted = new HashSet<eggwright.book.name.EntryId>();
        for (var load : loads) {
            int since = 0;
            var kind = StageKind.SET_TO_FIRST_LOOK;
            for (var look : load.looks()) {
                var whole = look.look().lookedAt() == null;
                if (whole && counted.add(look.entry()) && look.inTheLoad() > 0) {
                    var together = look.look().scope().tray() == null ? sharing(loads, look) : List.of(load);
                    stages.computeIfAbsent(kind, k -> new ArrayList<>())
                            .add(came(
                                    set,
                                    main,
                                    together,
                                    look.inTheLoad(),
                                    Math.max(0, look.inTheLoad() - look.look().takenOut()),
                                    since,
                                    look.day()));
                }
                if (whole) {
                    since = Math.max(since, look.day());
                    kind = StageKind.LOOK_TO_LOOK;
                }
            }
        }
    }

    private static List<LoadPicture> sharing(List<LoadPicture> loads, LookTaken look) {
        return loads.stream()
                .filter(l -> l.looks().stream().anyMatch(other -> other.entry().equals(look.entry())))
                .toList();
    }

    private static Came came(
            SetName set, Species main, List<LoadPicture> together, int of, int through, int fromDay, int toDay) {
        var parcels = together.stream().flatMap(l -> l.parcels().stream()).toList();
        var species = mostOf(parcels).orElse(main);
        return new Came(set, species, of, through, together.size(), fromDay, Math.max(fromDay, toDay), pens(parcels));
    }

    /** Loads whose fates were counted together are one count; the others each their own. */
    private static void hatch(
            SetName set,
            Species main,
            List<LoadPicture> loads,
            EggAccount account,
            int day,
            Map<StageKind, List<Came>> stages) {
        int looked = lastLookDay(loads);
        var found = new ArrayList<Came>();
        for (var together : CountedTogether.of(account.atTheLamp())) {
            var counted = loads.stream()
                    .filter(l -> together.loads().contains(l.ref()))
                    .toList();
            if (together.eggs() > 0 && !counted.isEmpty()) {
                found.add(came(set, main, counted, together.eggs(), together.saleable(), looked, day));
            }
        }
        if (!found.isEmpty()) {
            stages.put(looked > 0 ? StageKind.LAST_LOOK_TO_CHICK : StageKind.SET_TO_CHICK, found);
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

    private static List<Passage.Waiting> waiting(Species main, List<LoadPicture> loads, EggAccount account) {
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
                groups.add(new Passage.Waiting(
                        mostOf(load.parcels()).orElse(main),
                        load.eggsNow(),
                        1,
                        Math.max(0, looked),
                        pens(load.parcels())));
            }
        }
        int rest = account.eggs(Fate.IN_SETTER) + account.eggs(Fate.IN_HATCHER) - toldApart;
        if (rest > 0) {
            groups.add(new Passage.Waiting(
                    main,
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
