package eggwright.climate.care;

import eggwright.book.picture.Picture;
import eggwright.climate.air.AirTelling;
import eggwright.climate.air.HandRead;
import eggwright.climate.air.NotedCare;
import eggwright.climate.air.SensorCare;
import eggwright.climate.air.Surroundings;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingStore;
import eggwright.climate.reading.ReadingStore.Extent;
import eggwright.climate.rollup.Cut;
import eggwright.climate.rollup.Gaps;
import eggwright.climate.rollup.Rollup;
import eggwright.climate.rollup.Rollups;
import eggwright.climate.sensor.Accuracy;
import eggwright.climate.sensor.Aside;
import eggwright.climate.sensor.DriftCheck;
import eggwright.climate.sensor.DriftCheck.Difference;
import eggwright.climate.sensor.Sifted;
import eggwright.climate.sensor.StuckCheck;
import eggwright.climate.sensor.StuckCheck.TwinMean;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Looks at the sensors of one place, each by itself, beside its twins, and beside what was read by hand. */
public final class PlaceSensors {
    /** So far back a sensor's habit and its difference from a twin are read. */
    public static final Duration LOOKED_BACK = Duration.ofDays(60);

    /** Silent for longer, it is not held to be stuck or drifting, but off. */
    private static final Duration SILENT = Duration.ofDays(3);

    private final ReadingStore store;
    private final Picture picture;
    private final SensorCare care;
    private final Surroundings surroundings;

    public PlaceSensors(ReadingStore store, Picture picture, Surroundings surroundings) {
        this.store = store;
        this.picture = picture;
        this.care = new NotedCare(picture);
        this.surroundings = surroundings;
    }

    private record Heard(Channel channel, Extent extent, Sifted sifted, List<Rollup> hours) {}

    /**
     * Every channel of the place, in the store's order.
     *
     * @param from since when to say what is held back; what findings need is read in any case
     */
    public List<SensorNow> of(ReadingPlace place, Instant from, Instant now) {
        var earliest = now.minus(LOOKED_BACK);
        var heard = new ArrayList<Heard>();
        for (var channel : store.channels()) {
            if (channel.place().equals(place)) {
                store.extent(channel)
                        .filter(extent -> !extent.first().isAfter(now))
                        .ifPresent(extent -> heard.add(heard(channel, extent, earliest, now)));
            }
        }
        var notes = notes(place);
        var believed = heard.stream().filter(one -> isBelieved(one, now)).toList();
        return heard.stream().map(one -> now(one, believed, notes, from, now)).toList();
    }

    private List<HandRead> notes(ReadingPlace place) {
        return place instanceof ReadingPlace.InMachine(var machine)
                ? picture.machine(machine).map(AirTelling::notes).orElse(List.of())
                : List.of();
    }

    /** Up to now: a clock of a logger that runs ahead writes later. */
    private Heard heard(Channel channel, Extent extent, Instant from, Instant now) {
        var sifted = care.sifted(store, channel, from, now.plusMillis(1));
        return new Heard(
                channel, extent, sifted, Rollups.of(channel, sifted.good(), care.corrections(channel), Cut.HOUR, null));
    }

    private SensorNow now(Heard one, List<Heard> believed, List<HandRead> notes, Instant from, Instant now) {
        var pairs = new HandPairs(one.channel(), one.sifted().good(), care.corrections(one.channel()), surroundings)
                .of(notes);
        var held = from.isBefore(now.minus(LOOKED_BACK))
                ? care.sifted(store, one.channel(), from, now.plusMillis(1)).held()
                : one.sifted().held().stream()
                        .filter(h -> !h.at().isBefore(from))
                        .toList();
        return new SensorNow(
                one.channel(),
                one.extent(),
                last(one, now),
                care.corrections(one.channel()).holding(now),
                aside(one, now),
                HeldStretch.of(held),
                pairs.isEmpty() ? Optional.empty() : Optional.of(pairs.getLast()),
                isBelieved(one, now) ? findings(one, believed, pairs) : List.of());
    }

    private Optional<Aside> aside(Heard one, Instant now) {
        return care.aside(one.channel()).stream()
                .filter(a -> a.covers(now.toEpochMilli()))
                .findFirst();
    }

    /** One that was set aside or fell silent is neither accused nor a witness against its twins. */
    private boolean isBelieved(Heard one, Instant now) {
        return aside(one, now).isEmpty() && one.extent().last().isAfter(now.minus(SILENT));
    }

    private OptionalDouble last(Heard one, Instant now) {
        var until = one.extent().last().isAfter(now) ? now : one.extent().last();
        for (var from : List.of(until.minus(SILENT), one.extent().first())) {
            var readings = store.between(one.channel(), from, until.plusMillis(1));
            if (!readings.isEmpty()) {
                return OptionalDouble.of(readings.value(readings.count() - 1));
            }
        }
        return OptionalDouble.empty();
    }

    private List<Finding> findings(Heard one, List<Heard> believed, List<ByHand> pairs) {
        var channel = one.channel();
        var good = one.sifted().good();
        var accuracy = Accuracy.of(channel.quantity());
        var findings = new ArrayList<Finding>();
        var twins = believed.stream().filter(other -> isTwin(one, other)).toList();
        var longestStep = Gaps.longestStep(good);
        Stream.concat(Stream.of(List.<TwinMean>of()), twins.stream().map(PlaceSensors::means))
                .flatMap(means -> StuckCheck.of(channel, good, longestStep, means).stream())
                .findFirst()
                .ifPresent(s -> findings.add(new Finding.Stays(s)));
        for (var twin : twins) {
            DriftCheck.ofTwins(differences(one, twin), accuracy.betweenTwins(), wasCompared(one, twin))
                    .ifPresent(d ->
                            findings.add(new Finding.FromTwin(twin.channel().sensor(), d)));
        }
        var since = since(channel);
        DriftCheck.fromHand(
                        pairs.stream()
                                .filter(p -> !p.at().isBefore(since))
                                .map(p -> new Difference(p.at(), p.corrected() - p.hand()))
                                .toList(),
                        accuracy.fromHand())
                .ifPresent(d -> findings.add(new Finding.FromHand(d)));
        return findings;
    }

    private static List<TwinMean> means(Heard twin) {
        return twin.hours().stream()
                .map(h -> new TwinMean(h.from(), h.to(), h.mean()))
                .toList();
    }

    /** Two eggs may well differ, so their probes are no twins. */
    private static boolean isTwin(Heard one, Heard other) {
        return one.channel().quantity() == other.channel().quantity()
                && one.channel().quantity() != Quantity.EGG_TEMPERATURE
                && !one.channel().sensor().equals(other.channel().sensor());
    }

    /** Both were held against a reference: then what they differ by is the air's. */
    private DriftCheck.Known wasCompared(Heard one, Heard twin) {
        return care.corrections(one.channel()).inOrder().isEmpty()
                        || care.corrections(twin.channel()).inOrder().isEmpty()
                ? DriftCheck.Known.NOT_BOTH_COMPARED
                : DriftCheck.Known.BOTH_COMPARED;
    }

    /** From the last comparison on: before, it read otherwise. */
    private Instant since(Channel channel) {
        var all = care.corrections(channel).inOrder();
        return all.isEmpty() ? Instant.EPOCH : all.getLast().from();
    }

    private List<Difference> differences(Heard one, Heard twin) {
        var a = since(one.channel());
        var b = since(twin.channel());
        var since = a.isAfter(b) ? a : b;
        Map<Instant, Double> means = new HashMap<>();
        twin.hours().forEach(hour -> means.put(hour.from(), hour.mean()));
        var differences = new ArrayList<Difference>();
        for (var hour : one.hours()) {
            var other = means.get(hour.from());
            if (other != null && !hour.from().isBefore(since)) {
                differences.add(new Difference(hour.from(), hour.mean() - other));
            }
        }
        return differences;
    }
}
