package eggwright.today.rule;

import eggwright.book.name.SetName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.SetPicture;
import eggwright.today.schedule.SpeciesSchedule;
import eggwright.today.task.TrayCount;
import eggwright.today.task.Where;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;

/**
 * A load in the machines, with the dates of its eggs.
 *
 * @param dates for each species in it, at least one
 */
record Tray(SetPicture set, LoadPicture load, List<SpeciesSchedule> dates, Where where) {
    Tray {
        dates = List.copyOf(dates);
    }

    SetName setName() {
        return set.name();
    }

    TrayCount count() {
        return new TrayCount(load.ref().tray(), load.eggsNow());
    }

    boolean isInSetter() {
        return load.phase() == LoadPhase.IN_SETTER;
    }

    LocalDate dayZero() {
        return dates.getFirst().set().toLocalDate();
    }

    /** The species whose transfer comes first: a tray of several goes over with it. */
    SpeciesSchedule firstToTransfer() {
        return first(Comparator.comparing(SpeciesSchedule::transfer));
    }

    SpeciesSchedule firstToHatch() {
        return first(Comparator.comparing(SpeciesSchedule::hatchFrom));
    }

    /** The species whose take-off comes last: until then chicks can come. */
    SpeciesSchedule lastToTakeOff() {
        return first(Comparator.comparing(SpeciesSchedule::takeOff).reversed());
    }

    ZonedDateTime takeOff() {
        return lastToTakeOff().takeOff();
    }

    private SpeciesSchedule first(Comparator<SpeciesSchedule> order) {
        return dates.stream().min(order).orElseThrow();
    }
}
