package eggwright.rates.candler;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.Looked;
import eggwright.book.fold.Effective;
import eggwright.book.name.EntryId;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.LookedOver;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** The looks and openings of one account, in the order in which they happened. */
final class Occasions {
    private final EggAccount account;
    private final Map<EntryId, Effective> entries;
    private final List<OneLook> looks;
    private final List<Opening> openings = new ArrayList<>();

    /** Clears of each look that were not opened so far. */
    private final Map<OneLook, Integer> unopened = new HashMap<>();

    /**
     * @param entries every entry that counts, by id
     * @param marksOnly looks that took nothing out by their nature
     */
    Occasions(EggAccount account, Map<EntryId, Effective> entries, Set<EntryId> marksOnly) {
        this.account = account;
        this.entries = entries;
        this.looks = looks(marksOnly);
        looks.forEach(look -> unopened.put(look, look.called()));
        account.fates().stream()
                .filter(f -> f.fate().sort() == FateSort.OPENED)
                .map(FateCount::by)
                .filter(Objects::nonNull)
                .distinct()
                .map(entries::get)
                .filter(Objects::nonNull)
                .sorted()
                .forEach(this::open);
    }

    List<OneLook> looks() {
        return looks;
    }

    List<Opening> openings() {
        return openings;
    }

    int unopened(OneLook look) {
        return unopened.getOrDefault(look, 0);
    }

    private List<OneLook> looks(Set<EntryId> marksOnly) {
        var parts = new HashMap<EntryId, List<LookedOver>>();
        for (var part : account.looks()) {
            parts.computeIfAbsent(part.by(), id -> new ArrayList<>()).add(part);
        }
        var found = new ArrayList<OneLook>();
        parts.forEach((id, over) -> {
            var entry = entries.get(id);
            if (entry != null && entry.payload() instanceof Looked look && !marksOnly.contains(id)) {
                found.add(look(entry, look, over));
            }
        });
        found.sort(Comparator.comparing(OneLook::entry));
        return List.copyOf(found);
    }

    private OneLook look(Effective entry, Looked look, List<LookedOver> over) {
        var of = new HashSet<ParcelId>();
        over.forEach(part -> of.addAll(part.of().ids()));
        int called = account.atTheLamp().stream()
                .filter(f -> f.fate() == Fate.CLEAR_UNOPENED && entry.id().equals(f.by()))
                .mapToInt(FateCount::eggs)
                .sum();
        return new OneLook(
                entry,
                look,
                of,
                over.stream().mapToInt(LookedOver::held).sum(),
                over.stream().mapToInt(LookedOver::seen).sum(),
                called,
                day(of, entry.at().toLocalDate()));
    }

    /** The parcels of these names. */
    Stream<Parcel> parcels(Set<ParcelId> of) {
        return account.parcels().values().stream().filter(parcel -> of.contains(parcel.id()));
    }

    private int day(Set<ParcelId> of, LocalDate on) {
        return parcels(of)
                .mapToInt(parcel -> (int) ChronoUnit.DAYS.between(parcel.setOn(), on))
                .min()
                .orElse(0);
    }

    private void open(Effective entry) {
        if (!(entry.payload() instanceof BrokenOut it)) {
            return;
        }
        var of = new HashSet<ParcelId>();
        var named = new EnumMap<Fate, Integer>(Fate.class);
        for (var count : account.fates()) {
            if (entry.id().equals(count.by()) && count.fate().sort() == FateSort.OPENED) {
                of.addAll(count.of().ids());
                named.merge(count.fate(), count.eggs(), Integer::sum);
            }
        }
        openings.add(new Opening(entry, of, named, from(entry, it, of)));
    }

    private Opening.From from(Effective entry, BrokenOut it, Set<ParcelId> of) {
        var candidates = looks.stream()
                .filter(look -> unopened(look) > 0)
                .filter(look -> it.scope().look() == null
                        ? look.speaksOf(of) && look.entry().compareTo(entry) < 0
                        : look.entry().id().equals(it.scope().look()))
                .toList();
        int there = candidates.stream().mapToInt(this::unopened).sum();
        int clears = Math.min(there, it.clearsOpened() == null ? it.opened() : it.clearsOpened());
        take(candidates, clears);
        // Where nobody said how many were clears the book takes them for clears first: a rule, not a thing seen, and no
        // ground to hold anything against a person.
        boolean said = it.clearsOpened() != null || it.scope().look() != null || there == 0;
        if (!said) {
            return new Opening.From.Together();
        }
        if (clears == it.opened()) {
            return new Opening.From.Clears(candidates);
        }
        return clears == 0 && it.scope().look() == null && it.opened() <= leftIn(entry, of)
                ? new Opening.From.LeftIn()
                : new Opening.From.Together();
    }

    private void take(List<OneLook> from, int clears) {
        int left = clears;
        for (var look : from) {
            int some = Math.min(left, unopened(look));
            unopened.put(look, unopened(look) - some);
            left -= some;
        }
    }

    /** Eggs of these parcels that no look took out: not hatched at the end, or opened from the machine. */
    private int leftIn(Effective opening, Set<ParcelId> of) {
        return account.atTheLamp().stream()
                .filter(f -> f.of().ids().stream().anyMatch(of::contains))
                .filter(f -> f.fate() == Fate.UNACCOUNTED
                        || f.fate() == Fate.PIPPED_ALIVE_LEFT
                        || opening.id().equals(f.by()))
                .mapToInt(FateCount::eggs)
                .sum();
    }
}
