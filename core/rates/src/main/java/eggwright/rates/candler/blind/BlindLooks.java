package eggwright.rates.candler.blind;

import eggwright.book.entry.Finding;
import eggwright.book.entry.PlaceSeen;
import eggwright.book.fold.Effective;
import eggwright.book.name.EntryId;
import eggwright.book.name.PersonName;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.Picture;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The second, blind looks of a book, each beside the usual look that it is held against. */
public final class BlindLooks {
    private BlindLooks() {}

    /** The ids of all blind looks: they mark, and take nothing out. */
    public static Set<EntryId> ids(Picture picture) {
        return loads(picture).stream()
                .flatMap(load -> load.secondLooks().taken().stream())
                .map(LookTaken::entry)
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * Each blind look with the usual look of another person that is nearest in time; one that has none is left out.
     *
     * @param entries every entry that counts, as the ledger that made the picture holds them: they say who looked
     */
    public static List<BlindPair> pairs(Picture picture, Collection<Effective> entries) {
        var who = new HashMap<EntryId, PersonName>();
        entries.forEach(entry -> who.put(entry.id(), entry.entry().who()));
        var pairs = new ArrayList<BlindPair>();
        for (var load : loads(picture)) {
            for (var blind : load.secondLooks().taken()) {
                usual(load, blind, who)
                        .ifPresent(first -> pairs.add(new BlindPair(seen(load, first, who), seen(load, blind, who))));
            }
        }
        return pairs;
    }

    private static List<LoadPicture> loads(Picture picture) {
        return picture.sets().values().stream()
                .flatMap(set -> set.loads().values().stream())
                .toList();
    }

    private static Optional<LookTaken> usual(LoadPicture load, LookTaken blind, Map<EntryId, PersonName> who) {
        var second = person(who, blind);
        return load.looks().stream()
                .filter(look -> !person(who, look).equals(second))
                .min(Comparator.comparing(look ->
                        java.time.Duration.between(look.at(), blind.at()).abs()));
    }

    private static SeenAtLook seen(LoadPicture load, LookTaken taken, Map<EntryId, PersonName> who) {
        var marked = taken.look().places().stream()
                .collect(Collectors.toMap(PlaceSeen::place, PlaceSeen::finding, BlindLooks::graver));
        return SeenAtLook.of(person(who, taken), load.ref(), taken, marked);
    }

    /** A place that was marked twice holds one egg: what takes it out outweighs that it lies wrong end up. */
    private static Finding graver(Finding one, Finding other) {
        return one == Finding.WRONG_END_UP ? other : one;
    }

    private static PersonName person(Map<EntryId, PersonName> who, LookTaken taken) {
        var found = who.get(taken.entry());
        if (found == null) {
            throw new IllegalArgumentException("The entries given are not those of the picture: " + taken.entry());
        }
        return found;
    }
}
