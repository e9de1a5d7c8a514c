package eggwright.today.task;

import eggwright.book.entry.RoundCheck;
import eggwright.book.name.MachineName;
import eggwright.book.name.SetName;
import eggwright.today.eggroom.EggLot;
import eggwright.trade.Species;
import java.util.List;
import java.util.Objects;

/** What the work is done on. */
public sealed interface Work {
    /**
     * Trays of one set that stand together.
     *
     * @param day of incubation on which the work falls due
     * @param species in these trays
     * @param trays in natural order
     */
    record OfTrays(SetName set, int day, List<Species> species, List<TrayCount> trays) implements Work {
        public OfTrays {
            species = List.copyOf(species);
            trays = List.copyOf(trays);
        }

        /** Eggs in those trays that have a number of their own. */
        public int eggs() {
            return trays.stream()
                    .map(TrayCount::eggs)
                    .filter(Objects::nonNull)
                    .mapToInt(Integer::intValue)
                    .sum();
        }

        /** Trays whose eggs were counted together with others, so that nobody knows how many are in each. */
        public int traysCountedTogether() {
            return (int) trays.stream().filter(t -> t.eggs() == null).count();
        }
    }

    /**
     * A set as a whole.
     *
     * @param day of incubation on which the work falls due
     * @param eggs how many the work is about; eggs still in where it is about the hatch to come
     */
    record OfSet(SetName set, int day, List<Species> species, int eggs) implements Work {
        public OfSet {
            species = List.copyOf(species);
        }
    }

    /**
     * Eggs of the egg room.
     *
     * @param lots which to take first; ages are those of the day of the work
     */
    record OfEggs(List<EggLot> lots) implements Work {
        public OfEggs {
            lots = List.copyOf(lots);
        }

        public int eggs() {
            return lots.stream().mapToInt(EggLot::eggs).sum();
        }
    }

    /**
     * The round at one machine: both bulbs are read, and these are looked at.
     *
     * @param checks beside dry and wet bulb
     * @param sets whose eggs are in it
     */
    record OfRound(List<RoundCheck> checks, List<SetName> sets) implements Work {
        public OfRound {
            checks = List.copyOf(checks);
            sets = List.copyOf(sets);
        }
    }

    /**
     * A machine.
     *
     * @param anyOf the machines it can be; one where that is known, none where the farm named no machine
     * @param sets whose eggs came out of it, or will go in
     */
    record OfMachine(List<MachineName> anyOf, List<SetName> sets) implements Work {
        public OfMachine {
            anyOf = List.copyOf(anyOf);
            sets = List.copyOf(sets);
        }
    }

    /** Chicks promised. */
    record OfOrders(List<Promise> promises) implements Work {
        public OfOrders {
            promises = List.copyOf(promises);
        }

        public int chicks() {
            return promises.stream().mapToInt(Promise::chicks).sum();
        }
    }
}
