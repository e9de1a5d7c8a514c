package eggwright.book.picture;

import java.util.List;
import java.util.SortedMap;

/**
 * The account of all eggs of one set, or of several sets whose eggs were pooled. The eggs of {@code parcels} equal the
 * eggs of {@code fates}, and those of {@code atTheLamp}.
 *
 * @param fates what became of every egg, break-outs taken in
 * @param atTheLamp the same before any egg was opened: what the lamp alone says
 * @param looks which eggs each look had before it, in time order
 */
public record EggAccount(
        SortedMap<ParcelId, Parcel> parcels, List<FateCount> fates, List<FateCount> atTheLamp, List<LookedOver> looks) {
    public EggAccount {
        parcels = java.util.Collections.unmodifiableSortedMap(new java.util.TreeMap<>(parcels));
        fates = List.copyOf(fates);
        atTheLamp = List.copyOf(atTheLamp);
        looks = List.copyOf(looks);
    }

    public int eggsSet() {
        return parcels.values().stream().mapToInt(Parcel::eggs).sum();
    }

    public int eggs(Fate fate) {
        return fates.stream()
                .filter(f -> f.fate() == fate)
                .mapToInt(FateCount::eggs)
                .sum();
    }
}
