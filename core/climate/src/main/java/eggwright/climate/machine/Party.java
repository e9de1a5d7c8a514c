package eggwright.climate.machine;

import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.SetPicture;
import eggwright.trade.Species;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** The eggs of one species of one set, in one machine. */
record Party(SetPicture set, Species species, List<LoadPicture> loads) {
    /** Where no egg tells. */
    static final Species CUSTOM = Species.PHEASANT;

    Party {
        loads = List.copyOf(loads);
    }

    int eggs() {
        return loads.stream()
                .mapToInt(load -> Objects.requireNonNullElse(load.eggsNow(), load.eggsSet()))
                .sum();
    }

    boolean isInSetter() {
        return loads.stream().anyMatch(load -> load.phase() == LoadPhase.IN_SETTER);
    }

    /** The species with most eggs: a tray of two goes by it. */
    static Species species(LoadPicture load) {
        var eggs = new TreeMap<Species, Integer>();
        load.parcels().forEach(parcel -> eggs.merge(parcel.lot().species(), parcel.eggs(), Integer::sum));
        return eggs.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(CUSTOM);
    }

    /** From the middle of the lay dates to the set, by eggs; 0 where no lay date is known. */
    double storedDays() {
        double days = 0;
        int eggs = 0;
        for (var load : loads) {
            for (var parcel : load.parcels()) {
                var from = parcel.lot().laidFrom();
                var to = parcel.lot().laidTo();
                var first = from == null ? to : from;
                var last = to == null ? from : to;
                if (first != null && last != null) {
                    double middle = (ChronoUnit.DAYS.between(first, parcel.setOn())
                                    + ChronoUnit.DAYS.between(last, parcel.setOn()))
                            / 2.0;
                    days += Math.max(0, middle) * parcel.eggs();
                    eggs += parcel.eggs();
                }
            }
        }
        return eggs == 0 ? 0 : days / eggs;
    }
}
