package eggwright.book.fold;

import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.ChicksDied;
import eggwright.book.entry.ChicksPlaced;
import eggwright.book.entry.ChicksSold;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.Discrepancy.About;
import eggwright.book.picture.Discrepancy.What.OfChicks;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.FarmPicture.Chicks;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Chicks after take-off, by species. No more can die in the brooders than were placed there. Of a species that was never
 * placed chicks may be sold: straight from the hatcher, where nobody counts a brooder. What was delivered on an order may
 * have come from either, and is held against nothing.
 */
final class ChickFold {
    private final Map<Species, Chicks> chicks = new TreeMap<>();
    /** Placed and not yet dead or sold; absent where none were placed. */
    private final Map<Species, Integer> there = new TreeMap<>();

    private final List<Discrepancy> discrepancies = new ArrayList<>();

    void placed(ChicksPlaced it) {
        add(it.species(), new Chicks(it.chicks(), 0, 0, 0));
        there.merge(it.species(), it.chicks(), Integer::sum);
    }

    void died(Effective entry, ChicksDied it) {
        add(it.species(), new Chicks(0, it.chicks(), 0, 0));
        less(entry, it.species(), it.chicks(), OfChicks.CHICKS_DIED);
    }

    void sold(Effective entry, ChicksSold it) {
        add(it.species(), new Chicks(0, 0, it.chicks(), 0));
        if (there.containsKey(it.species())) {
            less(entry, it.species(), it.chicks(), OfChicks.CHICKS_SOLD);
        }
    }

    void delivered(ChicksDelivered it) {
        add(it.species(), new Chicks(0, 0, 0, it.chicks()));
    }

    private void add(Species species, Chicks more) {
        chicks.merge(species, more, Chicks::plus);
    }

    private void less(Effective entry, Species species, int gone, OfChicks what) {
        int held = there.getOrDefault(species, 0);
        if (gone > held) {
            discrepancies.add(new Discrepancy(
                    DiscrepancyKind.CHICKS_SHORT, List.of(entry.id()), new About.Chicks(species), gone, held, what));
        }
        there.computeIfPresent(species, (s, was) -> Math.max(0, was - gone));
    }

    Map<Species, Chicks> chicks() {
        return chicks;
    }

    List<Discrepancy> discrepancies() {
        return discrepancies;
    }
}
