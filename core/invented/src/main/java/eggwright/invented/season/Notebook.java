package eggwright.invented.season;

import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.ChicksOrdered;
import eggwright.book.entry.ChicksSold;
import eggwright.book.entry.EggsSold;
import eggwright.book.entry.Entry;
import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Looked;
import eggwright.book.entry.MachineAdded;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Payload;
import eggwright.book.entry.PenOpened;
import eggwright.book.entry.Replaced;
import eggwright.book.entry.Weighed;
import eggwright.book.entry.Withdrawn;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import eggwright.invented.chance.Draw;
import eggwright.invented.chance.Streams;
import eggwright.invented.truth.Truth;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/** Writes down what the keepers note: who, on which device, when, with which slips, and when it reached the desk. */
final class Notebook {
    private static final int LONGEST_MEND_HOURS = 40;

    private final Truth truth;
    private final Streams streams;
    private final FarmId farm;
    private final List<PersonName> keepers;
    private final List<DeviceName> phones;
    private final DeviceName desk = new DeviceName("desk");
    private final Map<String, RandomGenerator> ids = new HashMap<>();
    private final Map<String, RandomGenerator> delays = new HashMap<>();
    private final Map<String, RandomGenerator> slips = new HashMap<>();
    private final List<Kept> entries = new ArrayList<>();

    Notebook(Truth truth, Streams streams) {
        this.truth = truth;
        this.streams = streams;
        this.farm = new FarmId(truth.farm().name());
        this.keepers = truth.farm().keepers().stream().map(PersonName::new).toList();
        this.phones = keepers.stream().map(k -> new DeviceName("phone of " + k)).toList();
    }

    List<Kept> entries() {
        return entries.stream()
                .sorted(Comparator.comparing(Kept::received)
                        .thenComparing(k -> k.entry().id()))
                .toList();
    }

    /** Notes something on the spot. */
    EntryId note(ZonedDateTime at, Payload payload) {
        return note(at, at.plusSeconds(20), payload);
    }

    /** Notes something later than it happened. */
    EntryId note(ZonedDateTime happened, ZonedDateTime noted, Payload payload) {
        var kind = payload.kindWord();
        var random = ids.computeIfAbsent(kind, k -> streams.of("ids", k));
        var id = EntryId.of(noted.toInstant().toEpochMilli(), random.nextLong(), random.nextLong());
        int keeper = keeper(noted.toLocalDate());
        entries.add(new Kept(
                new Entry(
                        id,
                        farm,
                        happened.toOffsetDateTime(),
                        noted.toOffsetDateTime(),
                        keepers.get(keeper),
                        isDeskWork(payload) ? desk : phones.get(keeper),
                        Origin.NOTED,
                        payload,
                        1),
                noted.plus(delay(payload)).toInstant(),
                Duration.ZERO));
        return id;
    }

    /** Notes a count, now and then wrong; a wrong one is mended within two days. */
    EntryId noteCount(ZonedDateTime at, Payload right) {
        var random = slips.computeIfAbsent(right.kindWord(), k -> streams.of("slips", k));
        if (!Draw.chance(random, truth.notebook().slipPct() / 100)) {
            return note(at, right);
        }
        var mendedAt = at.plusMinutes(Draw.between(random, 20, LONGEST_MEND_HOURS * 60));
        if (Draw.chance(random, 0.2)) {
            var id = note(at, right);
            var again = note(at, at.plusMinutes(3), right);
            note(mendedAt, new Withdrawn(again, again, "Noted twice"));
            return id;
        }
        var id = note(at, Slip.of(right, random));
        note(mendedAt, new Replaced(id, id, null, right));
        return id;
    }

    /** Puts another payload in the place of one that was noted, as if it had been noted so. */
    void renote(EntryId id, Payload payload) {
        entries.replaceAll(
                k -> k.entry().id().equals(id) ? new Kept(with(k.entry(), payload), k.received(), k.clockOffset()) : k);
    }

    boolean isMended(EntryId id) {
        return entries.stream()
                .anyMatch(k -> k.entry().payload() instanceof Replaced it
                        && it.target().equals(id));
    }

    Payload payload(EntryId id) {
        return entries.stream()
                .filter(k -> k.entry().id().equals(id))
                .findFirst()
                .orElseThrow()
                .entry()
                .payload();
    }

    private static Entry with(Entry entry, Payload payload) {
        return new Entry(
                entry.id(),
                entry.farm(),
                entry.happened(),
                entry.noted(),
                entry.who(),
                entry.device(),
                entry.origin(),
                payload,
                entry.payloadVersion());
    }

    private int keeper(LocalDate day) {
        return streams.of("keeper", day).nextInt(keepers.size());
    }

    /** The dark room has no signal: looks reach the desk when the evening is over. */
    private Duration delay(Payload payload) {
        var random = delays.computeIfAbsent(payload.kindWord(), k -> streams.of("delays", k));
        double late = Draw.chance(random, truth.notebook().latePct() / 100)
                ? random.nextDouble() * truth.notebook().lateHours() * 3600
                : 0;
        int soon = payload instanceof Looked || payload instanceof Weighed
                ? Draw.between(random, 600, 3000)
                : Draw.between(random, 2, 40);
        return Duration.ofSeconds((long) late + soon);
    }

    private static boolean isDeskWork(Payload payload) {
        return payload instanceof HabitsNoted
                || payload instanceof PenOpened
                || payload instanceof MachineAdded
                || payload instanceof EggsSold
                || payload instanceof ChicksOrdered
                || payload instanceof ChicksDelivered
                || payload instanceof ChicksSold
                || payload instanceof Replaced
                || payload instanceof Withdrawn;
    }
}
