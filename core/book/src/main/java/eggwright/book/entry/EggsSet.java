package eggwright.book.entry;

import eggwright.book.name.SetName;
import eggwright.units.OutOfRange;
import java.util.List;

/** Trays went into the heat. Day 0 of the set is the local date on which this happened. */
public record EggsSet(SetName set, List<LoadSet> loads) implements Payload {
    public EggsSet {
        loads = List.copyOf(loads);
        if (loads.isEmpty()) {
            throw new OutOfRange(
                    EntryReason.SET_WITHOUT_TRAYS, "Set " + set + " has no trays. Name at least one.", set.text());
        }
    }

    public int eggs() {
        return loads.stream().mapToInt(LoadSet::eggs).sum();
    }
}
