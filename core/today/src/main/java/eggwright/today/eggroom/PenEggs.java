package eggwright.today.eggroom;

import eggwright.book.picture.ShelfKey;
import eggwright.trade.source.Sourced;
import java.util.List;

/**
 * What waits of one pen and species.
 *
 * @param lots oldest first; those of unknown age before them
 */
public record PenEggs(
        ShelfKey key, List<EggLot> lots, Sourced<Double> storageAdvisedDays, Sourced<Double> storageLimitDays) {
    public PenEggs {
        lots = List.copyOf(lots);
    }

    public int eggs() {
        return lots.stream().mapToInt(EggLot::eggs).sum();
    }

    public int eggs(Storage storage) {
        return lots.stream()
                .filter(l -> l.storage() == storage)
                .mapToInt(EggLot::eggs)
                .sum();
    }
}
