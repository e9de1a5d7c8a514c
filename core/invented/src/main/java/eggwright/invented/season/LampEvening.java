package eggwright.invented.season;

import eggwright.book.entry.EggsMoved;
import eggwright.invented.truth.LampTruth;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The evenings of a set before the hatcher: trays weighed, looked at, pooled, clears opened. */
final class LampEvening {
    private static final long MINUTES_A_TRAY = 6;

    private final Farm farm;
    private final Scale scale;

    LampEvening(Farm farm) {
        this.farm = farm;
        this.scale = new Scale(farm);
    }

    void work(Batch batch) {
        scale.weigh(batch, batch.setOn(), batch.startedAt.plusMinutes(40));
        for (var species : batch.species()) {
            var transferOn =
                    farm.bird(species).dates(batch.startedAt).transfer().toLocalDate();
            boolean first = true;
            for (int day : days(batch, transferOn)) {
                evening(batch, species, batch.setOn().plusDays(day));
                if (first) {
                    pool(batch, species, batch.setOn().plusDays(day));
                    first = false;
                }
            }
        }
    }

    private List<Integer> days(Batch batch, LocalDate transferOn) {
        int transfer = batch.day(transferOn);
        var days = new ArrayList<>(
                farm.truth.lamp().looks().stream().filter(d -> d < transfer).toList());
        if (farm.truth.lamp().atTransfer() == LampTruth.AtTransfer.LOOKED_AT) {
            days.add(transfer);
        }
        return days;
    }

    private void evening(Batch batch, Species species, LocalDate on) {
        var at = farm.at(on, farm.truth.season().workHour());
        var loads = batch.of(species).stream().filter(l -> !l.inside.isEmpty()).toList();
        scale.weigh(batch, on, at.minusMinutes(30));
        var opener = at.plusMinutes(MINUTES_A_TRAY * loads.size() + 30L);
        for (var load : loads) {
            var look = new TrayLook(farm, batch, load, on);
            look.note(at);
            at = at.plusMinutes(MINUTES_A_TRAY);
            if (look.open(opener)) {
                opener = opener.plusMinutes(4);
            }
        }
    }

    /** After the first look the thinnest trays are put together, where they fit. */
    private void pool(Batch batch, Species species, LocalDate on) {
        var at = farm.at(on, farm.truth.season().workHour())
                .plusMinutes(MINUTES_A_TRAY * batch.of(species).size() + 5L);
        var thin = new ArrayList<>(batch.of(species).stream()
                .filter(l -> !l.inside.isEmpty()
                        && l.inside.size() < farm.truth.trays().pooledBelow())
                .toList());
        while (thin.size() >= 2) {
            var from = thin.removeLast();
            var to = thin.stream()
                    .filter(l -> l.inside.size() + from.inside.size()
                            <= farm.truth.trays().eggs())
                    .findFirst();
            if (to.isPresent()) {
                farm.notebook.note(
                        at, new EggsMoved(batch.name, from.tray, null, null, batch.name, to.get().tray, null, null));
                to.get().inside.addAll(from.inside);
                from.inside = new ArrayList<>();
                at = at.plusMinutes(3);
            }
        }
    }
}
