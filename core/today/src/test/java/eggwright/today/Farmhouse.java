package eggwright.today;

import eggwright.book.entry.*;
import eggwright.book.fold.Ledger;
import eggwright.book.name.*;
import eggwright.book.picture.Picture;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Urgency;
import eggwright.trade.Species;
import eggwright.units.Temperature;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Keeps the book of an invented farm for tests, in words that a keeper would use. Local hours only. */
final class Farmhouse {
    static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    static final MachineName SETTER = new MachineName("Setter 1");
    static final MachineName HATCHER = new MachineName("Hatcher");
    static final SectionName SHELF = new SectionName("2");

    final ZoneId zone;
    private final List<Kept> entries = new ArrayList<>();
    /** Absent: the farm notes no zone. */
    private final @Nullable String noted;

    private int made;

    private Farmhouse(ZoneId zone, @Nullable String noted) {
        this.zone = zone;
        this.noted = noted;
    }

    /** A farm with a setter and a hatcher, before the season. */
    static Farmhouse in(ZoneId zone, LocalDate before) {
        return opened(new Farmhouse(zone, zone.getId()), before);
    }

    /** The same of a farm that notes no zone; its devices go by Greenwich. */
    static Farmhouse withoutZone(LocalDate before) {
        return opened(new Farmhouse(ZoneOffset.UTC, null), before);
    }

    private static Farmhouse opened(Farmhouse farm, LocalDate before) {
        var at = before.atTime(9, 0);
        farm.note(at, habits(null, null));
        farm.note(at, new MachineAdded(SETTER, MachineKind.SETTER, List.of(new SectionName("1"), SHELF), 12, ""));
        farm.note(at, new MachineAdded(HATCHER, MachineKind.HATCHER, List.of(), 6, ""));
        return farm;
    }

    /** The usual farm: Chicago time, opened on 1 March 2027. */
    static Farmhouse usual() {
        return in(CHICAGO, LocalDate.of(2027, 3, 1));
    }

    EntryId note(LocalDateTime at, Payload payload) {
        return note(at.atZone(zone).toOffsetDateTime(), payload);
    }

    /** As a device noted it whose clock is set to another zone. */
    EntryId note(OffsetDateTime when, Payload payload) {
        if (payload instanceof HabitsNoted it && it.timeZone() == null) {
            payload = new HabitsNoted(
                    "Fallow End", noted, it.setWeekday(), it.setHour(), it.candlingDays(), it.rounds(), it.workHour());
        }
        var id = EntryId.of(when.toInstant().toEpochMilli(), 0, ++made);
        entries.add(new Kept(
                new Entry(
                        id,
                        new FarmId("Fallow End"),
                        when,
                        when,
                        new PersonName("Wren"),
                        new DeviceName("desk"),
                        Origin.NOTED,
                        payload,
                        1),
                when.toInstant(),
                Duration.ZERO));
        return id;
    }

    List<Kept> entries() {
        return List.copyOf(entries);
    }

    Picture picture() {
        return Ledger.of(entries).picture();
    }

    DaySheet sheet(LocalDateTime now) {
        return DaySheet.of(picture(), now.atZone(zone));
    }

    ZonedDateTime at(LocalDateTime local) {
        return local.atZone(zone);
    }

    // Words of the trade.

    static LocalDateTime on(String dateAndHour) {
        return LocalDateTime.parse(dateAndHour);
    }

    static HabitsNoted habits(@Nullable DayOfWeek setWeekday, @Nullable List<Integer> candlingDays) {
        return new HabitsNoted(null, null, setWeekday, null, candlingDays, null, LocalTime.of(18, 0));
    }

    static SetName set(String name) {
        return new SetName(name);
    }

    static TrayName tray(int number) {
        return new TrayName(Integer.toString(number));
    }

    static LoadSet load(int tray, Species species, int eggs) {
        return load(tray, SETTER, species, eggs);
    }

    static LoadSet load(int tray, @Nullable MachineName machine, Species species, int eggs) {
        return new LoadSet(tray(tray), machine, SHELF, null, List.of(Lot.of(null, species, null, null, eggs)));
    }

    static EggsSet setting(String set, LoadSet... loads) {
        return new EggsSet(set(set), List.of(loads));
    }

    static Looked look(String set, int tray, FindingCount... findings) {
        return new Looked(Scope.ofLoad(set(set), tray(tray)), null, null, List.of(findings), 0, null);
    }

    /** A second, blind look that found nothing. */
    static Looked blind(String set, int tray) {
        return new Looked(
                Scope.ofLoad(set(set), tray(tray)), null, null, List.of(), 0, null, List.of(), LookSort.SECOND_BLIND);
    }

    static Transferred transfer(@Nullable MachineName hatcher, String set, int... trays) {
        return new Transferred(
                hatcher,
                Arrays.stream(trays)
                        .mapToObj(t -> new TransferOf(set(set), tray(t), null, null))
                        .toList());
    }

    static TakenOff pull(String set, Pull pull, int saleable) {
        return new TakenOff(Scope.ofSet(set(set)), pull, saleable, 0, 0, 0);
    }

    static ClimateNoted bulbs(MachineName machine) {
        return new ClimateNoted(
                machine, null, Temperature.parse("99.5F"), Temperature.parse("86F"), null, List.of(), "");
    }

    static EggsGathered gathered(@Nullable String pen, Species species, LocalDate laid, int kept) {
        return new EggsGathered(pen == null ? null : new PenName(pen), species, laid, laid, kept, List.of());
    }

    // Reading a sheet.

    static List<Task> of(TaskKind kind, List<Task> tasks) {
        return tasks.stream().filter(t -> t.kind() == kind).toList();
    }

    static List<TaskKind> kinds(List<Task> tasks) {
        return tasks.stream().map(Task::kind).distinct().toList();
    }

    /** How a kind of work stands on a sheet; OVER where it isn't on it. */
    static Urgency standing(DaySheet sheet, TaskKind kind) {
        return sheet.all(kind).stream().map(Task::urgency).findFirst().orElse(Urgency.OVER);
    }
}
