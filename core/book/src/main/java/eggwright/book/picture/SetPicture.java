package eggwright.book.picture;

import eggwright.book.name.EntryId;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * One set, from setting to take-off.
 *
 * @param startedAt when it went into the heat, with the offset of the place
 * @param setOn local date of day 0
 * @param story the entries that speak of it, in order
 * @param pulls in time order
 * @param takenOffAt when the last pull was made; absent where chicks may still come
 * @param account the egg account that holds its eggs; shared by sets whose eggs were pooled
 */
public record SetPicture(
        SetName name,
        OffsetDateTime startedAt,
        LocalDate setOn,
        SortedMap<TrayName, LoadPicture> loads,
        List<EntryId> story,
        List<PullTaken> pulls,
        @Nullable OffsetDateTime takenOffAt,
        EggAccount account) {
    public SetPicture {
        loads = java.util.Collections.unmodifiableSortedMap(new java.util.TreeMap<>(loads));
        story = List.copyOf(story);
        pulls = List.copyOf(pulls);
    }

    public Optional<LoadPicture> load(TrayName tray) {
        return Optional.ofNullable(loads.get(tray));
    }

    public int eggsSet() {
        return loads.values().stream().mapToInt(LoadPicture::eggsSet).sum();
    }

    public SortedSet<Species> species() {
        var found = new TreeSet<Species>();
        for (var load : loads.values()) {
            for (var parcel : load.parcels()) {
                found.add(parcel.lot().species());
            }
        }
        return found;
    }

    /** Whether any of its eggs are in a machine. */
    public boolean isRunning() {
        return loads.values().stream().anyMatch(l -> l.phase() != LoadPhase.OUT);
    }
}
