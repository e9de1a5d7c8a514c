package eggwright.invented.season;

import eggwright.book.entry.Looked;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.invented.answer.Planted;
import java.util.ArrayList;
import java.util.List;

/** Plants counts that differ from the book and that nobody has settled: the first on set 4, then on every second set. */
final class Planting {
    private static final int FIRST_SET = 4;
    private static final int EVERY = 2;

    private final Farm farm;

    Planting(Farm farm) {
        this.farm = farm;
    }

    List<Planted> plant(List<Batch> batches) {
        var planted = new ArrayList<Planted>();
        for (int i = 0; i < farm.truth.notebook().unmendedSlips(); i++) {
            int number = FIRST_SET + EVERY * i;
            batches.stream().filter(b -> b.number == number).findFirst().ifPresent(b -> {
                for (var id : b.firstLooks) {
                    if (!farm.notebook.isMended(id) && farm.notebook.payload(id) instanceof Looked it) {
                        farm.notebook.renote(id, countedOneMore(b, it));
                        planted.add(new Planted(id, DiscrepancyKind.COUNT_DIFFERS));
                        break;
                    }
                }
            });
        }
        return planted;
    }

    private static Looked countedOneMore(Batch batch, Looked it) {
        int before = batch.loads.stream()
                .filter(l -> l.tray.equals(it.scope().tray()))
                .mapToInt(l -> l.eggs.size())
                .sum();
        return new Looked(it.scope(), it.lookedAt(), before + 1, it.findings(), it.removedUnsorted(), it.minutesOut());
    }
}
