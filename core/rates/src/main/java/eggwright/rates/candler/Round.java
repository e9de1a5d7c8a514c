package eggwright.rates.candler;

import eggwright.book.fold.Effective;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks of one person on one day at different eggs: tray after tray. What is counted later of several trays together
 * can so still be told of the person who looked at all of them.
 *
 * @param looks in the order in which they happened, at least one
 * @param of the parcels of all of them
 */
record Round(List<OneLook> looks, Lots of) {
    Round {
        looks = List.copyOf(looks);
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
        return looks.getFirst().who().equals(look.who())
                && on().equals(look.on())
                && !look.of().meets(of);
    }

    private Round with(OneLook look) {
        var more = new ArrayList<>(looks);
        more.add(look);
        return new Round(more, of.with(look.of()));
    }

    LocalDate on() {
        return looks.getFirst().on();
    }

    /** Whether another look at some of these eggs was made after this round had them. */
    boolean isBefore(OneLook later) {
        return later.of().meets(of)
                && looks.stream().allMatch(look -> !look.of().meets(later.of()) || later.isAfter(look));
    }

    /** Whether an entry came after all its looks at these eggs. */
    boolean isBefore(Effective entry, Lots parcels) {
        return looks.stream().allMatch(look -> !look.of().meets(parcels) || entry.compareTo(look.entry()) > 0);
    }
}
