package eggwright.today;

import eggwright.book.name.EntryId;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.FarmPicture;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.MachinePicture;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SecondLooks;
import eggwright.book.picture.SetPicture;
import eggwright.book.picture.ShelfPicture;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What of a picture a day sheet can still ask for from some moment on: {@link DaySheet#of} says the same of it as of the
 * whole picture, at that moment and at any later one. What is over is left out, which makes it small enough to be kept
 * beside a book. Not for anything but day sheets.
 *
 * @param from the moment
 * @param picture what is left; its totals mean nothing
 */
public record AbridgedPicture(Instant from, Picture picture) {
    /** Looks and take-offs ask for work for two days, readings for one and a half; the rest is caution. */
    private static final Duration ASKS_FOR_WORK = Duration.ofDays(7);

    private static final EggAccount NO_ACCOUNT = new EggAccount(new TreeMap<>(), List.of(), List.of(), List.of());

    public static AbridgedPicture of(Picture whole, Instant from) {
        Predicate<OffsetDateTime> recent = at -> !at.toInstant().isBefore(from.minus(ASKS_FOR_WORK));
        var farm = whole.farm();
        return new AbridgedPicture(
                from,
                new Picture(
                        new FarmPicture(farm.habits(), farm.overrides(), List.of(), Map.of()),
                        whole.pens(),
                        mapped(whole.eggRoom(), AbridgedPicture::shelf),
                        mapped(whole.machines(), m -> machine(m, recent)),
                        new TreeMap<>(),
                        mapped(whole.sets(), s -> set(s, recent)),
                        List.of(),
                        whole.orders(),
                        List.of(),
                        whole.entryCount()));
    }

    private static ShelfPicture shelf(ShelfPicture shelf) {
        return new ShelfPicture(
                shelf.key(),
                shelf.stored(),
                new TreeMap<>(),
                Map.of(),
                shelf.received(),
                shelf.set(),
                shelf.sold(),
                shelf.eaten(),
                shelf.discarded());
    }

    /** The latest reading of the thermometer says whether the machine is at heat, however old it is. */
    private static MachinePicture machine(MachinePicture machine, Predicate<OffsetDateTime> recent) {
        var latest = machine.climate().stream()
                .filter(r -> r.what().dry() != null)
                .max(Comparator.comparing(MachinePicture.Read::at))
                .stream();
        var climate = Stream.concat(latest, machine.climate().stream().filter(r -> recent.test(r.at())))
                .distinct()
                .toList();
        return new MachinePicture(
                machine.machine(),
                machine.does(),
                machine.sections(),
                machine.trayPlaces(),
                machine.use(),
                machine.cleanedAt(),
                climate);
    }

    private static SetPicture set(SetPicture set, Predicate<OffsetDateTime> recent) {
        Set<EntryId> looks = new HashSet<>();
        for (var load : set.loads().values()) {
            load.looks().stream().filter(l -> recent.test(l.at())).forEach(l -> looks.add(l.entry()));
        }
        var takenOff = set.takenOffAt();
        var isOver = !set.isRunning() && looks.isEmpty() && (takenOff == null || !recent.test(takenOff));
        return new SetPicture(
                set.name(),
                set.startedAt(),
                set.setOn(),
                mapped(set.loads(), isOver ? AbridgedPicture::over : AbridgedPicture::open),
                List.of(),
                List.of(),
                takenOff,
                isOver ? NO_ACCOUNT : account(set.account(), looks));
    }

    private static LoadPicture open(LoadPicture load) {
        return load(load, load.parcels(), load.looks());
    }

    /** Of a load that is over only the machine that it stood in last. */
    private static LoadPicture over(LoadPicture load) {
        return load(load, List.of(), List.of());
    }

    private static LoadPicture load(LoadPicture load, List<Parcel> parcels, List<LookTaken> looks) {
        var places = load.places();
        return new LoadPicture(
                load.ref(),
                load.setOn(),
                parcels,
                load.eggsSet(),
                load.eggsNow(),
                load.phase(),
                places.isEmpty() ? places : List.of(places.getLast()),
                looks,
                SecondLooks.NONE,
                List.of(),
                load.transferredAt(),
                new TreeMap<>());
    }

    /** What waits to be opened: taken out at these looks, or left at the last pull. */
    private static EggAccount account(EggAccount account, Set<EntryId> looks) {
        var waits = new ArrayList<FateCount>();
        for (var fate : account.fates()) {
            var by = fate.by();
            if (fate.fate() == Fate.UNACCOUNTED
                    || fate.fate() == Fate.PIPPED_ALIVE_LEFT
                    || (fate.fate().sort() == FateSort.LAMP && by != null && looks.contains(by))) {
                waits.add(fate);
            }
        }
        return new EggAccount(new TreeMap<>(), waits, List.of(), List.of());
    }

    private static <K, V> SortedMap<K, V> mapped(SortedMap<K, V> all, Function<V, V> left) {
        var mapped = new TreeMap<K, V>(all.comparator());
        all.forEach((key, value) -> mapped.put(key, left.apply(value)));
        return mapped;
    }
}
