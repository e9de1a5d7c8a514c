package eggwright.invented.season;

import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.MachineAdded;
import eggwright.book.entry.MachineCleaned;
import eggwright.book.entry.MachineKind;
import eggwright.book.entry.PenOpened;
import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.name.SectionName;
import java.time.LocalTime;
import java.util.List;

/** Opens the book before the season: habits, machines, pens. */
final class Setup {
    private static final int PENNED_DAYS_BEFORE = 12;

    private final Farm farm;

    Setup(Farm farm) {
        this.farm = farm;
    }

    void note() {
        var truth = farm.truth;
        var at = farm.at(farm.from.minusDays(PENNED_DAYS_BEFORE), LocalTime.of(14, 5));
        farm.notebook.note(
                at,
                new HabitsNoted(
                        truth.farm().name(),
                        truth.farm().zone().getId(),
                        truth.season().setWeekday(),
                        truth.season().setHour(),
                        truth.lamp().looks(),
                        Rounds.HOURS,
                        truth.season().workHour()));
        int minute = 3;
        for (var machine : truth.machines()) {
            var name = new MachineName(machine.name());
            List<SectionName> sections = machine.does() == MachineKind.HATCHER
                    ? List.of()
                    : truth.sectionsOf(machine).stream()
                            .map(s -> new SectionName(s.name()))
                            .toList();
            farm.notebook.note(
                    at.plusMinutes(minute), new MachineAdded(name, machine.does(), sections, machine.trayPlaces(), ""));
            farm.notebook.note(
                    at.plusDays(3).plusMinutes(minute), new MachineCleaned(name, null, "Washed, dried, run empty"));
            minute += 4;
        }
        for (var pen : truth.pens()) {
            farm.notebook.note(
                    at.plusMinutes(minute),
                    new PenOpened(new PenName(pen.name()), pen.species(), pen.cocks(), pen.hens(), ""));
            minute += 3;
        }
    }
}
