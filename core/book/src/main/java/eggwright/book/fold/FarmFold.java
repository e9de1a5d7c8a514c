package eggwright.book.fold;

import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.ChicksDied;
import eggwright.book.entry.ChicksPlaced;
import eggwright.book.entry.ChicksSold;
import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.IncidentNoted;
import eggwright.book.entry.Remarked;
import eggwright.book.entry.SpeciesOverridden;
import eggwright.book.picture.FarmClock;
import eggwright.book.picture.FarmPicture;
import eggwright.book.picture.Habits;
import eggwright.trade.Species;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Folds what is true of the farm as a whole: habits, own figures, incidents, remarks, chicks after take-off. */
final class FarmFold implements PartFold<FarmPicture> {
    private final Map<Species, SortedMap<String, FarmPicture.Overridden>> overrides = new TreeMap<>();
    private final List<FarmPicture.Note> notes = new ArrayList<>();
    private final ChickFold chicks = new ChickFold();
    private Habits habits = Habits.CUSTOM;

    FarmFold() {}

    @Override
    public Folded<FarmPicture> folded() {
        var own = new TreeMap<Species, SortedMap<String, FarmPicture.Overridden>>();
        overrides.forEach((species, fields) -> own.put(species, new TreeMap<>(fields)));
        return new Folded<>(new FarmPicture(habits, own, notes, chicks.chicks()), chicks.discrepancies());
    }

    @Override
    public void take(Effective entry) {
        switch (entry.payload()) {
            case HabitsNoted it -> habits = changed(habits, it);
            case SpeciesOverridden it -> override(entry, it);
            case IncidentNoted it -> notes.add(new FarmPicture.Note(entry.id(), entry.at(), it));
            case Remarked it -> notes.add(new FarmPicture.Note(entry.id(), entry.at(), it));
            case ChicksPlaced it -> chicks.placed(it);
            case ChicksDied it -> chicks.died(entry, it);
            case ChicksSold it -> chicks.sold(entry, it);
            case ChicksDelivered it -> chicks.delivered(it);
            default -> {
                // No other kind speaks of the farm as a whole.
            }
        }
    }

    private void override(Effective entry, SpeciesOverridden it) {
        var fields = overrides.computeIfAbsent(it.species(), s -> new TreeMap<>());
        if (it.value().isEmpty()) {
            fields.remove(it.field());
        } else {
            fields.put(
                    it.field(),
                    new FarmPicture.Overridden(it.value(), entry.at().toLocalDate()));
        }
    }

    private static Habits changed(Habits was, HabitsNoted it) {
        return new Habits(
                it.farmName() == null ? was.farmName() : it.farmName(),
                it.timeZone() == null ? was.clock() : FarmClock.of(ZoneId.of(it.timeZone())),
                it.setWeekday() == null ? was.setWeekday() : it.setWeekday(),
                it.setHour() == null ? was.setHour() : it.setHour(),
                it.candlingDays() == null ? was.candlingDays() : it.candlingDays(),
                it.rounds() == null ? was.rounds() : it.rounds(),
                it.workHour() == null ? was.workHour() : it.workHour(),
                it.trayRows() == null ? was.trayRows() : it.trayRows(),
                it.minutesOut() == null ? was.minutesOut() : it.minutesOut(),
                it.altitude() == null ? was.altitude() : it.altitude(),
                it.wetBulbAir() == null ? was.wetBulbAir() : it.wetBulbAir());
    }
}
