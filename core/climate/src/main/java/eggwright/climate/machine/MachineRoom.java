package eggwright.climate.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Picture;
import eggwright.book.picture.Place;
import eggwright.book.picture.SetPicture;
import eggwright.climate.air.AirHistory;
import eggwright.climate.air.AirHour;
import eggwright.climate.air.AirTelling;
import eggwright.climate.air.AirTold;
import eggwright.climate.air.KnownBy;
import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.climate.development.HatchClock;
import eggwright.climate.development.Learnt;
import eggwright.climate.development.Warmth;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.Aim;
import eggwright.climate.weight.LossReckoning;
import eggwright.climate.weight.MassSeries;
import eggwright.climate.weight.Shells;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.units.Humidity;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** Puts a machine's sets, its air and its weighings together. */
public final class MachineRoom {
    /** Where no egg tells what a machine is for. */
    private static final Species CUSTOM = Species.PHEASANT;

    private static final double MILLIS_PER_DAY = 86_400_000.0;

    private final Picture picture;
    private final AirTelling telling;
    private final Surroundings surroundings;
    private final Function<Species, SpeciesProfile> profiles;
    private final Instant now;
    private final Map<MachineName, AirTold> told = new HashMap<>();

    /** @param profiles the trade's, with the farm's own figures laid over them */
    public MachineRoom(
            Picture picture,
            AirTelling telling,
            Surroundings surroundings,
            Function<Species, SpeciesProfile> profiles,
            Instant now) {
        this.picture = picture;
        this.telling = telling;
        this.surroundings = surroundings;
        this.profiles = profiles;
        this.now = now;
    }

    /** One species of one set, in one machine. */
    private record Party(SetPicture set, Species species, List<LoadPicture> loads) {
        int eggs() {
            return loads.stream()
                    .mapToInt(l -> Objects.requireNonNullElse(l.eggsNow(), l.eggsSet()))
                    .sum();
        }
    }

    /** As it is now. */
    public MachineNow of(MachineName machine) {
        var parties = parties(machine);
        var setPoint = setPoint(parties);
        var hour = AirHistory.of(told(machine), setPoint, surroundings, now.minus(Duration.ofHours(1)), now);
        var air = hour.getLast();
        var inside = new ArrayList<SetInside>();
        var advised = new ArrayList<Advising.InMachine>();
        for (var party : parties) {
            var one = inside(party, setPoint, air);
            inside.add(one);
            if (isInSetter(party)) {
                advised.add(advised(party, one));
            }
        }
        var advice = Advising.of(
                advised,
                new SetPoint(air.air().temperature(), air.air().humidity()),
                surroundings,
                Advising.LIMITS,
                now);
        return new MachineNow(machine, air, setPoint, inside, advice);
    }

    private static boolean isInSetter(Party party) {
        return party.loads().stream().anyMatch(l -> l.phase() == LoadPhase.IN_SETTER);
    }

    private List<Party> parties(MachineName machine) {
        var parties = new ArrayList<Party>();
        for (var set : picture.sets().values()) {
            var bySpecies = new TreeMap<Species, List<LoadPicture>>();
            for (var load : set.loads().values()) {
                var stands = load.place().map(Place::machine);
                if (load.phase() != LoadPhase.OUT
                        && stands.isPresent()
                        && stands.get().equals(machine)) {
                    bySpecies
                            .computeIfAbsent(species(load), s -> new ArrayList<>())
                            .add(load);
                }
            }
            bySpecies.forEach((species, loads) -> parties.add(new Party(set, species, loads)));
        }
        parties.sort(Comparator.comparing(p -> p.set().startedAt().toInstant()));
        return parties;
    }

    /** The species with most eggs: a tray of two goes by it. */
    private static Species species(LoadPicture load) {
        var eggs = new TreeMap<Species, Integer>();
        load.parcels().forEach(p -> eggs.merge(p.lot().species(), p.eggs(), Integer::sum));
        return eggs.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(CUSTOM);
    }

    private SetPoint setPoint(List<Party> parties) {
        var most = parties.stream().max(Comparator.comparingInt(Party::eggs));
        var profile = profiles.apply(most.map(Party::species).orElse(CUSTOM));
        boolean hatches = most.isPresent() && !isInSetter(most.get());
        var humidity = hatches
                ? profile.hatcherHumidity().value()
                : profile.setterHumidity().value();
        return new SetPoint(
                hatches
                        ? profile.hatcherTemperature().value()
                        : profile.setterTemperature().value(),
                new Humidity((humidity.low().pct() + humidity.high().pct()) / 2));
    }

    private SetInside inside(Party party, SetPoint setPoint, AirHour airNow) {
        var profile = profiles.apply(party.species());
        var start = party.set().startedAt().toInstant();
        var history = history(party, setPoint, start);
        var eggs = history.stream()
                .map(h -> new Warmth(h.from(), h.to(), h.air().temperature().celsius()))
                .toList();
        double stored = storedDays(party);
        var hatch = HatchClock.of(profile, start, now, eggs, airNow.air().temperature(), stored, Learnt.NOTHING);
        var weighed =
                party.loads().stream().flatMap(l -> MassSeries.of(l).stream()).toList();
        var loss = LossReckoning.of(
                party.set().name(), party.species(), start, now, weighed, history, Shells.published(party.species()));
        return new SetInside(
                party.set().name(),
                party.species(),
                Math.toIntExact(ChronoUnit.DAYS.between(party.set().setOn(), today())),
                party.eggs(),
                stored,
                start,
                start.plusMillis(Math.round(HatchClock.middleDays(profile) * MILLIS_PER_DAY)),
                hatch,
                loss,
                airNow.warmth(),
                history.stream().filter(h -> h.warmth() != KnownBy.SET_POINT).count(),
                history.size());
    }

    private LocalDate today() {
        return picture.farm().habits().clock().dateOf(now.atOffset(ZoneOffset.UTC));
    }

    /** The air that the eggs had since the set, through every machine in which they stood. */
    private List<AirHour> history(Party party, SetPoint setPoint, Instant start) {
        var places = party.loads().getFirst().places();
        var history = new ArrayList<AirHour>();
        for (int i = 0; i < places.size(); i++) {
            var from = i == 0 || places.get(i).from().isBefore(start)
                    ? start
                    : places.get(i).from();
            var to = i + 1 < places.size() ? places.get(i + 1).from() : now;
            to = to.isAfter(now) ? now : to;
            if (from.isBefore(to)) {
                var machine = Optional.ofNullable(places.get(i).machine());
                history.addAll(AirHistory.of(
                        machine.map(this::told).orElse(AirTold.NOTHING), setPoint, surroundings, from, to));
            }
        }
        return history;
    }

    private AirTold told(MachineName machine) {
        var known = told.get(machine);
        if (known != null) {
            return known;
        }
        var from = picture.sets().values().stream()
                .filter(SetPicture::isRunning)
                .map(s -> s.startedAt().toInstant())
                .min(Comparator.naturalOrder())
                .orElse(now)
                .minus(Duration.ofDays(1));
        var fresh = telling.of(new ReadingPlace.InMachine(machine), picture.machine(machine), from, now);
        told.put(machine, fresh);
        return fresh;
    }

    /** From the middle of the lay dates to the set, by eggs. */
    private static double storedDays(Party party) {
        double days = 0;
        int eggs = 0;
        for (var load : party.loads()) {
            for (var parcel : load.parcels()) {
                var from = parcel.lot().laidFrom();
                var to = parcel.lot().laidTo();
                if (from != null || to != null) {
                    var first = from == null ? Objects.requireNonNull(to) : from;
                    var last = to == null ? first : to;
                    double middle = (ChronoUnit.DAYS.between(first, parcel.setOn())
                                    + ChronoUnit.DAYS.between(last, parcel.setOn()))
                            / 2.0;
                    days += Math.max(0, middle) * parcel.eggs();
                    eggs += parcel.eggs();
                }
            }
        }
        return eggs == 0 ? 0 : days / eggs;
    }

    private Advising.InMachine advised(Party party, SetInside inside) {
        var aim = Aim.ofTrade(party.species());
        var profile = profiles.apply(party.species());
        double transfer = profile.transferDay().value();
        // What lies beyond the transfer is the hatcher's; the band is then taken on the day of transfer.
        double day = Math.min(aim.band().byDay(), transfer);
        var onDay = day < aim.band().byDay() ? new Aim(aim.band().onDay(day), aim.source(), aim.bestSets()) : aim;
        return new Advising.InMachine(
                inside.loss(), onDay, inside.startedAt().plusMillis(Math.round(day * MILLIS_PER_DAY)), inside.eggs());
    }
}
