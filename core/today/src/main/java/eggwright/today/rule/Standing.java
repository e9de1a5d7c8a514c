package eggwright.today.rule;

import eggwright.book.entry.MachineKind;
import eggwright.book.entry.MachineUse;
import eggwright.book.name.MachineName;
import eggwright.book.picture.Habits;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.MachinePicture;
import eggwright.book.picture.Picture;
import eggwright.book.picture.Place;
import eggwright.book.picture.SetPicture;
import eggwright.today.schedule.FarmProfiles;
import eggwright.today.schedule.FarmZone;
import eggwright.today.schedule.Schedule;
import eggwright.today.schedule.SpeciesSchedule;
import eggwright.today.task.Reason;
import eggwright.today.task.Span;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How the farm stands at one moment: what every rule looks at.
 *
 * @param now in the farm's own zone
 * @param trays every load in a machine, but for those of sets long over
 * @param longOver loads whose hatch was over {@value #LONG_OVER_DAYS} days ago and more
 */
public record Standing(
        Picture picture, ZonedDateTime now, FarmProfiles profiles, List<Tray> trays, List<Tray> longOver) {
    /** After so many days a take-off that was not noted is no work for today but a gap in the book. */
    static final int LONG_OVER_DAYS = 30;

    /** For how many days to come work is looked for. */
    public static final int DAYS_AHEAD = 7;

    public Standing {
        trays = List.copyOf(trays);
        longOver = List.copyOf(longOver);
    }

    /**
     * @param now in any zone; the farm's own is taken where it noted one, and that of {@code now} where it did not
     */
    public static Standing of(Picture picture, ZonedDateTime now) {
        var zone = FarmZone.of(picture.farm(), now.getZone());
        var here = now.withZoneSameInstant(zone);
        var profiles = FarmProfiles.of(picture.farm());
        var trays = new ArrayList<Tray>();
        var longOver = new ArrayList<Tray>();
        for (var set : picture.sets().values()) {
            @Nullable LoadPicture before = null;
            List<SpeciesSchedule> dates = List.of();
            for (var load : set.loads().values()) {
                if (load.phase() == LoadPhase.OUT) {
                    continue;
                }
                if (before == null || !haveSameDates(before, load)) {
                    dates = Schedule.of(load, set, profiles, picture.farm().habits(), zone);
                }
                before = load;
                var tray = new Tray(set, load, dates, where(picture, load));
                var over = tray.takeOff().toLocalDate().plusDays(LONG_OVER_DAYS).isBefore(here.toLocalDate());
                (over ? longOver : trays).add(tray);
            }
        }
        return new Standing(picture, here, profiles, trays, longOver);
    }

    /** Most trays of a set have: the same eggs, on the same day. */
    private static boolean haveSameDates(LoadPicture one, LoadPicture other) {
        return one.setOn().equals(other.setOn()) && species(one).equals(species(other));
    }

    private static Set<Species> species(LoadPicture load) {
        var species = EnumSet.noneOf(Species.class);
        for (var parcel : load.parcels()) {
            species.add(parcel.lot().species());
        }
        return species;
    }

    LocalDate today() {
        return now.toLocalDate();
    }

    ZoneId zone() {
        return now.getZone();
    }

    Habits habits() {
        return picture.farm().habits();
    }

    ZonedDateTime at(LocalDate day, LocalTime hour) {
        return ZonedDateTime.of(day, hour, zone());
    }

    ZonedDateTime atWork(LocalDate day) {
        return at(day, habits().workHour());
    }

    ZonedDateTime here(OffsetDateTime at) {
        return at.atZoneSameInstant(zone());
    }

    Task task(TaskKind kind, Span when, Where where, Work work, List<Reason> reasons, Target target) {
        return Task.of(kind, when, now, where, work, reasons, target);
    }

    /** Machines in use of any of these kinds, in natural order. */
    List<MachinePicture> machines(MachineKind... kinds) {
        var wanted = List.of(kinds);
        return picture.machines().values().stream()
                .filter(m -> m.use() == MachineUse.IN_USE)
                .filter(m -> m.does() != null && wanted.contains(m.does()))
                .toList();
    }

    /** The loads that stand in a machine. */
    List<Tray> in(MachineName machine) {
        return trays.stream().filter(t -> machine.equals(t.where().machine())).toList();
    }

    /** Nothing hatches in a setter: which hatcher its trays will go to is not known before. */
    Where whereItHatches(Tray tray) {
        var machine = tray.where().machine();
        var isKnown = !tray.isInSetter() || (machine != null && does(picture, machine) != MachineKind.SETTER);
        return isKnown ? tray.where() : Where.NOT_SAID;
    }

    /** Whether a machine sets and hatches, and all its eggs went in on one day. */
    boolean isOneMachineOfOneAge(Where where) {
        var machine = where.machine();
        return machine != null
                && does(picture, machine) == MachineKind.SETTER_AND_HATCHER
                && in(machine).stream().map(Tray::dayZero).distinct().count() == 1;
    }

    /** When the machine's last eggs were taken off; empty where it holds eggs, or none were ever taken off in it. */
    Optional<ZonedDateTime> emptiedAt(MachineName machine) {
        if (!in(machine).isEmpty()) {
            return Optional.empty();
        }
        return picture.sets().values().stream()
                .filter(s -> s.loads().values().stream()
                        .anyMatch(l -> machine.equals(where(picture, l).machine())))
                .map(SetPicture::takenOffAt)
                .filter(Objects::nonNull)
                .map(this::here)
                .max(ZonedDateTime::compareTo);
    }

    /** A load that went over without the hatcher being noted does not stand where it stood before. */
    private static Where where(Picture picture, LoadPicture load) {
        return load.place()
                .filter(p -> isStill(picture, load, p))
                .map(p -> new Where(p.machine(), p.section()))
                .orElse(Where.NOT_SAID);
    }

    private static boolean isStill(Picture picture, LoadPicture load, Place place) {
        var wentOver = load.transferredAt();
        if (load.phase() == LoadPhase.IN_SETTER
                || wentOver == null
                || !place.from().isBefore(wentOver)) {
            return true;
        }
        var machine = place.machine();
        return machine != null && does(picture, machine) != MachineKind.SETTER;
    }

    private static MachineKind does(Picture picture, MachineName machine) {
        var known = picture.machines().get(machine);
        return known == null || known.does() == null ? MachineKind.SETTER : known.does();
    }
}
