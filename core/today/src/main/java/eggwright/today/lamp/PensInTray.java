package eggwright.today.lamp;

import eggwright.book.entry.Lot;
import eggwright.book.name.PenName;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.today.lamp.LampTray.PenEggs;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Whose eggs are in a tray of several pens, as far as somebody with an egg in the hand can tell. */
final class PensInTray {
    private PensInTray() {}

    /** Empty where there is one pen only, where some eggs look alike, or where eggs of other trays were put in. */
    static List<PenEggs> of(LoadPicture load, EggAccount account) {
        var lots = new TreeMap<PenName, List<Lot>>();
        for (var parcel : load.parcels()) {
            var pen = parcel.lot().pen();
            if (pen == null) {
                return List.of();
            }
            lots.merge(pen, List.of(parcel.lot()), PensInTray::both);
        }
        if (lots.size() < 2 || !canBeToldApart(lots)) {
            return List.of();
        }
        var known = eggs(load, account);
        if (known.isEmpty()) {
            return List.of();
        }
        var eggs = known.get();
        return lots.entrySet().stream()
                .filter(pen -> eggs.isMixed() || eggs.ofPens().containsKey(pen.getKey()))
                .map(pen ->
                        new PenEggs(pen.getKey(), eggs.of(pen.getKey()), mark(pen.getValue()), places(pen.getValue())))
                .toList();
    }

    private static List<Lot> both(List<Lot> some, List<Lot> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    /** One pen may have neither marks nor places: its eggs are told by having none. No two share a mark or a place. */
    private static boolean canBeToldApart(SortedMap<PenName, List<Lot>> lots) {
        var signs = new HashSet<String>();
        int plain = 0;
        for (var pen : lots.values()) {
            plain += pen.stream().allMatch(Lot::canBeToldApart) ? 0 : 1;
            for (var sign : signs(pen)) {
                if (!signs.add(sign)) {
                    return false;
                }
            }
        }
        return plain <= 1;
    }

    private static Set<String> signs(List<Lot> pen) {
        var signs = new HashSet<String>();
        for (var lot : pen) {
            if (lot.mark() != null) {
                signs.add(lot.mark().strip().toLowerCase(Locale.ROOT));
            }
            lot.places().forEach(place -> signs.add("at " + place));
        }
        return signs;
    }

    /** Eggs by pen; mixed where only their sum is known. */
    private record Known(SortedMap<PenName, Integer> ofPens, boolean isMixed) {
        @Nullable Integer of(PenName pen) {
            return isMixed ? null : ofPens.get(pen);
        }
    }

    /** Empty where the tray holds others than its own, or they were counted with those of other trays. */
    private static Optional<Known> eggs(LoadPicture load, EggAccount account) {
        var own = load.parcels().stream().map(Parcel::id).collect(Collectors.toSet());
        var ofPens = new TreeMap<PenName, Integer>();
        int sum = 0;
        boolean isMixed = false;
        for (var count : account.fates()) {
            if (count.fate() == Fate.IN_SETTER && own.containsAll(count.of().ids())) {
                var pens = count.of().ids().stream()
                        .map(id -> pen(account, id))
                        .distinct()
                        .toList();
                isMixed |= pens.size() > 1;
                ofPens.merge(pens.getFirst(), count.eggs(), Integer::sum);
                sum += count.eggs();
            }
        }
        return Objects.equals(load.eggsNow(), sum) ? Optional.of(new Known(ofPens, isMixed)) : Optional.empty();
    }

    private static PenName pen(EggAccount account, ParcelId id) {
        return Objects.requireNonNull(
                Objects.requireNonNull(account.parcels().get(id)).lot().pen());
    }

    private static @Nullable String mark(List<Lot> lots) {
        var marks =
                lots.stream().map(Lot::mark).filter(Objects::nonNull).distinct().toList();
        return marks.isEmpty() ? null : String.join(", ", marks);
    }

    private static List<Integer> places(List<Lot> lots) {
        return lots.stream().flatMap(lot -> lot.places().stream()).sorted().toList();
    }
}
