package eggwright.rates.candler;

import eggwright.book.fold.Effective;
import eggwright.book.name.EntryId;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One account with its parcels numbered and its counts beside their entries, so that a large book stays quick. */
final class AccountTable {
    /**
     * So many eggs of these parcels together.
     *
     * @param by the entry that counted them; empty for eggs still in
     */
    record Count(Lots of, Fate fate, int eggs, Optional<Effective> by) {
        boolean isBy(Effective entry) {
            return by.isPresent() && by.get().id().equals(entry.id());
        }
    }

    private final EggAccount account;
    private final List<Parcel> parcels;
    private final Map<ParcelId, Integer> numbers = new HashMap<>();
    private final IdentityHashMap<Parcels, Lots> known = new IdentityHashMap<>();
    private final List<Count> fates;
    private final List<Count> atTheLamp;

    AccountTable(EggAccount account, Map<EntryId, Effective> entries) {
        this.account = account;
        this.parcels = List.copyOf(account.parcels().values());
        parcels.forEach(parcel -> numbers.put(parcel.id(), numbers.size()));
        this.fates = counts(account.fates(), entries);
        this.atTheLamp = counts(account.atTheLamp(), entries);
    }

    private List<Count> counts(List<FateCount> counts, Map<EntryId, Effective> entries) {
        var found = new ArrayList<Count>(counts.size());
        for (var count : counts) {
            var by = count.by() == null ? Optional.<Effective>empty() : Optional.ofNullable(entries.get(count.by()));
            found.add(new Count(lots(count.of()), count.fate(), count.eggs(), by));
        }
        return found;
    }

    EggAccount account() {
        return account;
    }

    /** What became of the eggs, break-outs taken in. */
    List<Count> fates() {
        return fates;
    }

    /** The same before any egg was opened. */
    List<Count> atTheLamp() {
        return atTheLamp;
    }

    /** Most counts of an account speak of a few groups of parcels, whose numbers are looked up once. */
    Lots lots(Parcels of) {
        return known.computeIfAbsent(
                of,
                parcelsOf -> Lots.of(parcelsOf.ids().stream()
                        .map(numbers::get)
                        .filter(Objects::nonNull)
                        .mapToInt(Integer::intValue)
                        .toArray()));
    }

    Stream<Parcel> parcels(Lots of) {
        return IntStream.of(of.numbers()).mapToObj(parcels::get);
    }
}
