package eggwright.invented.season;

import eggwright.book.entry.EggsMoved;
import eggwright.invented.truth.LampTruth;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.ZonedDateTime;
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
        scale.weigh(batch, batch.loads, batch.setOn(), batch.startedAt.plusMinutes(40));
        long later = 0;
        for (var species : batch.species()) {
            var transferOn =
                    farm.bird(species).dates(batch.startedAt).transfer().toLocalDate();
            boolean first = true;
            for (int day : days(batch, transferOn)) {
                evening(batch, species, at(batch, day, later));
                if (first) {
                    pool(batch, species, at(batch, day, later));
                    first = false;
                }
            }
            // The next species is looked at when this one is done.
            later += MINUTES_A_TRAY * batch.of(species).size() + 10L;
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

    private ZonedDateTime at(Batch batch, int day, long later) {
        return farm.at(batch.setOn().plusDays(day), farm.truth.season().workHour())
                .plusMinutes(later);
    }

    private void evening(Batch batch, Species species, ZonedDateTime start) {
        var at = start;
        var on = start.toLocalDate();
        var loads = batch.of(species).stream().filter(l -> !l.inside.isEmpty()).toList();
        scale.weigh(batch, loads, on, at.minusMinutes(8));
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
    private void pool(Batch batch, Species species, ZonedDateTime start) {
        var at = start.plusMinutes(MINUTES_A_TRAY * batch.of(species).size() + 5L);
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
