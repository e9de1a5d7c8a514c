package eggwright.rates.candler;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.Looked;
import eggwright.book.fold.Effective;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.LookedOver;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The looks and openings of one account, in the order in which they happened. */
final class Occasions {
    private final AccountTable table;
    private final Map<EntryId, Effective> entries;
    private final List<OneLook> looks;
    private final List<Opening> openings = new ArrayList<>();

    /** Clears of each look that were not opened so far, by the look's entry. */
    private final Map<EntryId, Integer> unopened = new HashMap<>();

    /**
     * @param entries every entry that counts, by id
     * @param marksOnly looks that took nothing out by their nature
     */
    Occasions(AccountTable table, Map<EntryId, Effective> entries, Set<EntryId> marksOnly) {
        this.table = table;
        this.entries = entries;
        this.looks = looks(marksOnly);
        looks.forEach(look -> unopened.put(look.entry().id(), look.called()));
        var opened = new TreeMap<Effective, List<AccountTable.Count>>();
        for (var count : table.fates()) {
            if (count.fate().sort() == FateSort.OPENED && count.by().isPresent()) {
                opened.computeIfAbsent(count.by().get(), entry -> new ArrayList<>())
                        .add(count);
            }
        }
        opened.forEach(this::open);
    }

    List<OneLook> looks() {
        return looks;
    }

    List<Opening> openings() {
        return openings;
    }

    int unopened(OneLook look) {
        return unopened.getOrDefault(look.entry().id(), 0);
    }

    private List<OneLook> looks(Set<EntryId> marksOnly) {
        var parts = new LinkedHashMap<EntryId, List<LookedOver>>();
        for (var part : table.account().looks()) {
            parts.computeIfAbsent(part.by(), id -> new ArrayList<>()).add(part);
        }
        var called = new HashMap<EntryId, Integer>();
        for (var count : table.atTheLamp()) {
            if (count.fate() == Fate.CLEAR_UNOPENED && count.by().isPresent()) {
                called.merge(count.by().get().id(), count.eggs(), Integer::sum);
            }
        }
        var found = new ArrayList<OneLook>();
        parts.forEach((id, over) -> {
            var entry = entries.get(id);
            if (entry != null && entry.payload() instanceof Looked look && !marksOnly.contains(id)) {
                found.add(look(entry, look, over, called.getOrDefault(id, 0)));
            }
        });
        found.sort(Comparator.comparing(OneLook::entry));
        return List.copyOf(found);
    }

    private OneLook look(Effective entry, Looked look, List<LookedOver> over, int called) {
        var of = Lots.of();
        for (var part : over) {
            of = of.with(table.lots(part.of()));
        }
        return new OneLook(
                entry,
                look,
                of,
                over.stream().mapToInt(LookedOver::held).sum(),
                over.stream().mapToInt(LookedOver::seen).sum(),
                called,
                day(of, entry.at().toLocalDate()));
    }

    private int day(Lots of, LocalDate on) {
        return table.parcels(of)
                .mapToInt(parcel -> (int) ChronoUnit.DAYS.between(parcel.setOn(), on))
                .min()
                .orElse(0);
    }

    private void open(Effective entry, List<AccountTable.Count> counts) {
        if (!(entry.payload() instanceof BrokenOut it)) {
            return;
        }
        var of = Lots.of();
        var named = new EnumMap<Fate, Integer>(Fate.class);
        for (var count : counts) {
            of = of.with(count.of());
            named.merge(count.fate(), count.eggs(), Integer::sum);
        }
        openings.add(new Opening(entry, of, named, from(entry, it, of)));
    }

    private Opening.From from(Effective entry, BrokenOut it, Lots of) {
        var candidates = looks.stream()
                .filter(look -> unopened(look) > 0)
                .filter(look -> it.scope().look() == null
                        ? look.of().meets(of) && look.entry().compareTo(entry) < 0
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
            unopened.put(look.entry().id(), unopened(look) - some);
            left -= some;
        }
    }

    /** Eggs of these parcels that no look took out: not hatched at the end, or opened from the machine. */
    private int leftIn(Effective opening, Lots of) {
        int eggs = 0;
        for (var count : table.atTheLamp()) {
            if (count.of().meets(of)
                    && (count.fate() == Fate.UNACCOUNTED
                            || count.fate() == Fate.PIPPED_ALIVE_LEFT
                            || count.isBy(opening))) {
                eggs += count.eggs();
            }
        }
        return eggs;
    }
}
