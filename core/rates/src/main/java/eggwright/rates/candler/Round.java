package eggwright.rates.candler;

import eggwright.book.fold.Effective;
import eggwright.book.picture.ParcelId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Looks of one person on one day at different eggs: tray after tray. What is counted later of several trays together
 * can so still be told of the person who looked at all of them.
 *
 * @param looks in the order in which they happened, at least one
 * @param of the parcels of all of them
 */
record Round(List<OneLook> looks, Set<ParcelId> of) {
    Round {
        looks = List.copyOf(looks);
        of = Set.copyOf(of);
    }

    /** Sorts looks into rounds; a second look at the same eggs on one day begins a round of its own. */
    static List<Round> of(List<OneLook> looks) {
        var rounds = new ArrayList<Round>();
        for (var look : looks) {
            int at = -1;
            for (int i = 0; i < rounds.size(); i++) {
                if (rounds.get(i).takes(look)) {
                    at = i;
                }
            }
            if (at < 0) {
                rounds.add(new Round(List.of(look), look.of()));
            } else {
                rounds.set(at, rounds.get(at).with(look));
            }
        }
        return rounds;
    }

    private boolean takes(OneLook look) {
        return looks.getFirst().who().equals(look.who()) && on().equals(look.on()) && !look.speaksOf(of);
    }

    private Round with(OneLook look) {
        var more = new ArrayList<>(looks);
        more.add(look);
        var all = new HashSet<>(of);
        all.addAll(look.of());
        return new Round(more, all);
    }

    LocalDate on() {
        return looks.getFirst().on();
    }

    boolean speaksOf(Set<ParcelId> parcels) {
        return parcels.stream().anyMatch(of::contains);
    }

    /** Whether a later look was made after this round, at least of what both speak of. */
    boolean isBefore(OneLook later) {
        return looks.stream().allMatch(look -> !look.speaksOf(later.of()) || later.isAfter(look))
                && !looks.contains(later);
    }

    /** Whether an entry came after all its looks at these eggs. */
    boolean isBefore(Effective entry, Set<ParcelId> parcels) {
        return looks.stream().allMatch(look -> !look.speaksOf(parcels) || entry.compareTo(look.entry()) > 0);
    }
}
