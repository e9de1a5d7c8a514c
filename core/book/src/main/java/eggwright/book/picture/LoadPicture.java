package eggwright.book.picture;

import eggwright.book.name.BasketName;
import eggwright.book.name.EntryId;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/**
 * One load.
 *
 * @param setOn local date of day 0
 * @param eggsSet eggs that went in at setting; 0 for a tray filled only by pooling
 * @param eggsNow eggs in it now; absent where they were last counted together with other loads
 * @param places where it stood, in time order; the last is where it stands
 * @param looks every look that counted it, whole-set looks too, in time order
 * @param secondLooks the blind ones, asked for and taken
 * @param baskets the hatcher baskets that its eggs went to
 * @param transferredAt when the first of it was transferred; absent where not yet
 * @param weighings by the entry that noted them
 */
public record LoadPicture(
        LoadRef ref,
        LocalDate setOn,
        List<Parcel> parcels,
        int eggsSet,
        @Nullable Integer eggsNow,
        LoadPhase phase,
        List<Place> places,
        List<LookTaken> looks,
        SecondLooks secondLooks,
        List<BasketName> baskets,
        @Nullable Instant transferredAt,
        SortedMap<EntryId, WeighedAt> weighings) {
    public LoadPicture {
        parcels = List.copyOf(parcels);
        places = List.copyOf(places);
        looks = List.copyOf(looks);
        baskets = List.copyOf(baskets);
        weighings = java.util.Collections.unmodifiableSortedMap(new java.util.TreeMap<>(weighings));
    }

    /** Where it stands; empty where never recorded. */
    public Optional<Place> place() {
        return places.isEmpty() ? Optional.empty() : Optional.of(places.getLast());
    }

    /** Whether it was ever looked at whole. */
    public boolean wasLookedAt() {
        return looks.stream().anyMatch(l -> l.look().lookedAt() == null);
    }
}
