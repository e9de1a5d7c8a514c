package eggwright.book.picture;

import eggwright.book.entry.SensorAt;
import eggwright.book.name.MachineName;
import eggwright.book.name.OrderNumber;
import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What the entries of one farm add up to.
 *
 * @param sensors those that somebody said something of
 * @param accounts one for each set, or for each group of sets whose eggs were pooled, in order of their first set
 * @param discrepancies what does not add up
 * @param entryCount entries folded
 */
public record Picture(
        FarmPicture farm,
        SortedMap<PenName, PenPicture> pens,
        SortedMap<ShelfKey, ShelfPicture> eggRoom,
        SortedMap<MachineName, MachinePicture> machines,
        SortedMap<SensorAt, SensorPicture> sensors,
        SortedMap<SetName, SetPicture> sets,
        List<EggAccount> accounts,
        SortedMap<OrderNumber, OrderPicture> orders,
        List<Discrepancy> discrepancies,
        int entryCount) {
    public Optional<SetPicture> set(SetName name) {
        return Optional.ofNullable(sets.get(name));
    }

    public Optional<PenPicture> pen(PenName name) {
        return Optional.ofNullable(pens.get(name));
    }

    public Optional<MachinePicture> machine(MachineName name) {
        return Optional.ofNullable(machines.get(name));
    }

    /** What was said of a sensor; empty where nothing was. */
    public Optional<SensorPicture> sensor(SensorAt sensor) {
        return Optional.ofNullable(sensors.get(sensor));
    }
}
