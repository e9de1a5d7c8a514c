package eggwright.book.fold;

import eggwright.book.entry.TakenOff;
import eggwright.book.name.EntryId;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.PullTaken;
import eggwright.book.picture.SecondLooks;
import eggwright.book.picture.SetPicture;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** When each set of a group began and ended, and which entries speak of it. */
final class SetStories {
    private final Map<SetName, OffsetDateTime> startedAt = new HashMap<>();
    private final Map<SetName, Set<EntryId>> mentions = new HashMap<>();
    private final Map<SetName, List<PullTaken>> pulls = new HashMap<>();
    private final Map<SetName, OffsetDateTime> lastPulls = new HashMap<>();

    /** The earliest setting is day 0. */
    void start(SetName set, Effective entry) {
        startedAt.putIfAbsent(set, entry.at());
    }

    boolean hasBegun(SetName set) {
        return startedAt.containsKey(set);
    }

    LocalDate setOn(SetName set) {
        var start = startedAt.get(set);
        if (start == null) {
            throw new IllegalStateException("Set " + set + " has not begun");
        }
        return start.toLocalDate();
    }

    void mention(SetName set, Effective entry) {
        mentions.computeIfAbsent(set, s -> new LinkedHashSet<>()).add(entry.id());
    }

    void pull(SetName set, Effective entry, TakenOff it) {
        pulls.computeIfAbsent(set, s -> new ArrayList<>()).add(new PullTaken(entry.at(), it));
    }

    void lastPull(SetName set, Effective entry) {
        lastPulls.put(set, entry.at());
    }

    SortedMap<SetName, SetPicture> pictures(SortedMap<LoadRef, LoadState> loads, List<Pool> pools, EggAccount account) {
        var pictures = new TreeMap<SetName, SetPicture>();
        for (var set : startedAt.entrySet()) {
            var mine = new TreeMap<TrayName, LoadPicture>();
            for (var load : loads.values()) {
                if (load.ref.set().equals(set.getKey())) {
                    mine.put(load.ref.tray(), picture(load, pools));
                }
            }
            var running = mine.values().stream().anyMatch(l -> l.phase() != LoadPhase.OUT);
            pictures.put(
                    set.getKey(),
                    new SetPicture(
                            set.getKey(),
                            set.getValue(),
                            set.getValue().toLocalDate(),
                            mine,
                            List.copyOf(mentions.getOrDefault(set.getKey(), Set.of())),
                            pulls.getOrDefault(set.getKey(), List.of()),
                            running ? null : lastPulls.get(set.getKey()),
                            account));
        }
        return pictures;
    }

    private static LoadPicture picture(LoadState load, List<Pool> pools) {
        int eggs = 0;
        var phase = LoadPhase.OUT;
        var countedApart = true;
        for (var pool : pools) {
            for (var spot : pool.spots()) {
                if (spot.load().equals(load.ref)) {
                    phase = Pool.earlier(phase, spot.phase());
                }
            }
            if (pool.isWhollyIn(load.ref)) {
                eggs += pool.eggs();
            } else {
                countedApart &= !pool.isIn(load.ref);
            }
        }
        @Nullable Integer eggsNow = countedApart ? eggs : null;
        return new LoadPicture(
                load.ref,
                load.setOn,
                load.parcels,
                load.eggsSet(),
                eggsNow,
                phase,
                load.places,
                load.looks,
                new SecondLooks(load.secondLooksAsked, load.secondLooksTaken),
                List.copyOf(load.baskets),
                load.transferredAt,
                load.weighings);
    }
}
