package eggwright.invented.season;

import eggwright.book.entry.EggsSet;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.Lot;
import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.invented.chance.Draw;
import eggwright.invented.truth.PenTruth;
import eggwright.invented.truth.TakeOffTruth.CountedBy;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/** Fills trays from the egg room and sets them. */
final class Filling {
    private final Farm farm;
    private final EggRoom room;
    private final TrayShelf trays;
    private final EggDraws draws;

    Filling(Farm farm, EggRoom room, TrayShelf trays, EggDraws draws) {
        this.farm = farm;
        this.room = room;
        this.trays = trays;
        this.draws = draws;
    }

    /** So many eggs of a pen for one tray. */
    private record Share(PenTruth pen, int eggs) {}

    /** The sets of one day: one, or one for each species where chicks are counted by the set. */
    List<Batch> fill(int number, LocalDate day) {
        var plans = new ArrayList<List<Share>>();
        var kinds = farm.truth.pens().stream().map(PenTruth::species).distinct().toList();
        for (var species : kinds) {
            plans.addAll(trayPlans(species, number));
        }
        int room = Math.min(farm.truth.trays().perSet(), trays.free(day));
        // The fullest trays go in first where there are more than places.
        var chosen = plans.stream()
                .sorted(java.util.Comparator.comparingInt(Filling::eggs).reversed())
                .limit(room)
                .toList();
        var going = plans.stream().filter(chosen::contains).limit(room).toList();
        var at = farm.at(day, farm.truth.season().setHour());
        if (farm.truth.takeOff().countedBy() != CountedBy.SET) {
            return going.isEmpty() ? List.of() : List.of(set(name(number, ""), number, at, going));
        }
        var batches = new ArrayList<Batch>();
        for (var species : kinds) {
            var mine = going.stream()
                    .filter(p -> p.getFirst().pen().species() == species)
                    .toList();
            if (!mine.isEmpty()) {
                var word = species == kinds.getFirst() ? "" : " " + species.word();
                batches.add(set(name(number, word), number, at.plusMinutes(12L * batches.size()), mine));
            }
        }
        return batches;
    }

    private SetName name(int number, String word) {
        return new SetName(farm.year() + "-" + number + word);
    }

    private static int eggs(List<Share> plan) {
        return plan.stream().mapToInt(Share::eggs).sum();
    }

    private List<List<Share>> trayPlans(Species species, int number) {
        var tray = farm.truth.trays();
        var plans = new ArrayList<List<Share>>();
        var rest = new ArrayDeque<Share>();
        for (var pen : farm.truth.pens()) {
            if (pen.species() == species) {
                int held = room.held(pen);
                for (int i = 0; i < held / tray.eggs(); i++) {
                    plans.add(List.of(new Share(pen, tray.eggs())));
                }
                if (held % tray.eggs() >= Math.min(tray.fewest(), tray.eggs())) {
                    rest.add(new Share(pen, held % tray.eggs()));
                }
            }
        }
        var random = farm.streams.of("mixing", species, number);
        while (!rest.isEmpty()) {
            var one = rest.removeFirst();
            var fits = rest.stream()
                    .filter(other -> other.eggs() + one.eggs() <= tray.eggs())
                    .findFirst();
            if (fits.isPresent() && Draw.chance(random, tray.mixedPct() / 100)) {
                rest.remove(fits.get());
                plans.add(List.of(one, fits.get()));
            } else {
                plans.add(List.of(one));
            }
        }
        return plans;
    }

    private Batch set(SetName name, int number, ZonedDateTime at, List<List<Share>> plans) {
        var loads = new ArrayList<Load>();
        var noted = new ArrayList<LoadSet>();
        var setter = new MachineName(farm.truth.setter().name());
        for (var plan : plans) {
            var species = plan.getFirst().pen().species();
            var spot = trays.next(at.toLocalDate()).orElseThrow();
            spot.takenUntil(farm.bird(species).dates(at).transfer().toLocalDate());
            var tray = new TrayName(Integer.toString(spot.tray));
            var eggs = new ArrayList<Egg>();
            var lots = new ArrayList<Lot>();
            for (var share : plan) {
                var laid = room.take(share.pen(), share.eggs());
                lots.add(Lot.of(
                        new PenName(share.pen().name()),
                        species,
                        laid.getFirst().on(),
                        laid.getLast().on(),
                        share.eggs()));
                eggs.addAll(draws.draw(name, tray, spot.section, share.pen(), laid, at));
            }
            var load = new Load(name, tray, species, spot.section, eggs);
            draws.misfortunes(load, at);
            loads.add(load);
            noted.add(new LoadSet(
                    tray, setter, new SectionName(spot.section.name()), Integer.toString(spot.position), lots));
        }
        farm.notebook.note(at, at.plusMinutes(9), new EggsSet(name, noted));
        return new Batch(name, number, at, loads);
    }
}
