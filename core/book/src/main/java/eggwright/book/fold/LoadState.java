package eggwright.book.fold;

import eggwright.book.name.BasketName;
import eggwright.book.name.EntryId;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.Place;
import eggwright.book.picture.SecondLook;
import eggwright.book.picture.WeighedAt;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What the fold knows of one load so far. */
final class LoadState {
    final LoadRef ref;
    final LocalDate setOn;
    final Instant startedAt;
    final List<Parcel> parcels = new ArrayList<>();
    final List<Place> places = new ArrayList<>();
    final List<LookTaken> looks = new ArrayList<>();
    final List<SecondLook> secondLooksAsked = new ArrayList<>();
    final List<LookTaken> secondLooksTaken = new ArrayList<>();
    final SortedSet<BasketName> baskets = new TreeSet<>();
    final SortedMap<EntryId, WeighedAt> weighings = new TreeMap<>();

    @Nullable Instant transferredAt;

    LoadState(LoadRef ref, LocalDate setOn, Instant startedAt) {
        this.ref = ref;
        this.setOn = setOn;
        this.startedAt = startedAt;
    }

    int eggsSet() {
        return parcels.stream().mapToInt(Parcel::eggs).sum();
    }

    int lastLookDay() {
        return looks.isEmpty() ? 0 : looks.getLast().day();
    }
}
