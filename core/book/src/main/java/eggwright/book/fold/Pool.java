package eggwright.book.fold;

import eggwright.book.picture.Fate;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Parcels;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Eggs in a machine of which only the sum is known: those of one spot, or of several that a count spoke of together.
 */
record Pool(List<Spot> spots, Parcels of, int eggs) implements Counted {
    static Pool of(Spot spot, int eggs) {
        return new Pool(List.of(spot), spot.of(), eggs);
    }

    Pool withEggs(int now) {
        return new Pool(spots, of, now);
    }

    Pool withSpots(List<Spot> now) {
        return new Pool(now, Spot.parcels(now), eggs);
    }

    boolean isIn(LoadRef load) {
        for (var spot : spots) {
            if (spot.load().equals(load)) {
                return true;
            }
        }
        return false;
    }

    /** Whether all of it is in this load. */
    boolean isWhollyIn(LoadRef load) {
        for (var spot : spots) {
            if (!spot.load().equals(load)) {
                return false;
            }
        }
        return true;
    }

    /** How far its eggs have come at least; OUT where a last pull spoke of all of them. */
    LoadPhase phase() {
        var phase = LoadPhase.OUT;
        for (var spot : spots) {
            phase = earlier(phase, spot.phase());
        }
        return phase;
    }

    static LoadPhase earlier(LoadPhase one, LoadPhase other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    Fate fate() {
        return phase() == LoadPhase.IN_SETTER ? Fate.IN_SETTER : Fate.IN_HATCHER;
    }

    /** One pool of them all: from here on only their sum is known. */
    static Pool together(Collection<Pool> many) {
        var spots = new ArrayList<Spot>();
        int eggs = 0;
        for (var pool : many) {
            spots.addAll(pool.spots);
            eggs += pool.eggs;
        }
        return new Pool(List.copyOf(spots), Spot.parcels(spots), eggs);
    }
}
