package eggwright.climate.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Picture;
import eggwright.book.picture.Place;
import eggwright.climate.air.AirHour;
import eggwright.climate.air.AirTelling;
import eggwright.climate.air.KnownBy;
import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.climate.development.HatchClock;
import eggwright.climate.development.HatchSeen;
import eggwright.climate.development.Learnt;
import eggwright.climate.development.LearntOffsets;
import eggwright.climate.development.Warmth;
import eggwright.climate.machine.MachineAir.Stage;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.Aim;
import eggwright.climate.weight.LossAhead;
import eggwright.climate.weight.LossReckoning;
import eggwright.climate.weight.MassSeries;
import eggwright.climate.weight.SetLoss;
import eggwright.climate.weight.StorageLoss;
import eggwright.egg.air.MoistAir;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Puts a machine's sets, its air and its weighings together. */
public final class MachineRoom {
    private static final double MILLIS_PER_DAY = 86_400_000.0;

    private final Picture picture;
    private final MachineAir air;
    private final Surroundings surroundings;
    private final Function<Species, SpeciesProfile> profiles;
    private final Instant now;
    private final Map<Species, FarmPast> past = new EnumMap<>(Species.class);
    /** Read when first asked for. */
    private @Nullable List<HatchSeen> hatches;

    /** @param profiles the trade's, with the farm's own figures laid over them */
    public MachineRoom(
            Picture picture,
            AirTelling telling,
            Surroundings surroundings,
            Function<Species, SpeciesProfile> profiles,
            Instant now) {
        this.picture = picture;
        this.air = new MachineAir(picture, telling, surroundings, profiles, now);
        this.surroundings = surroundings;
        this.profiles = profiles;
        this.now = now;
    }

    /** As it is now. */
    public MachineNow of(MachineName machine) {
        var parties = parties(machine);
        var most = parties.stream().max(Comparator.comparingInt(Party::eggs));
        var setPoint = air.setPoint(
                most.map(Party::species).orElse(Party.CUSTOM),
                most.isPresent() && !most.get().isInSetter() ? Stage.HATCHER : Stage.SETTER);
        var hour = air.last(machine, setPoint);
        var inside = new ArrayList<SetInside>();
        var advised = new ArrayList<Advising.InMachine>();
        for (var party : parties) {
            var one = inside(party, hour);
            inside.add(one);
            if (party.isInSetter()) {
                advised.add(advised(party, one));
            }
        }
        var advice = Advising.of(
                advised,
                new SetPoint(hour.air().temperature(), hour.air().humidity()),
                surroundings,
                Advising.LIMITS,
                now);
        return new MachineNow(machine, hour, setPoint, inside, advice);
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
                            .computeIfAbsent(Party.species(load), s -> new ArrayList<>())
                            .add(load);
                }
            }
            bySpecies.forEach((species, loads) -> parties.add(new Party(set, species, loads)));
        }
        parties.sort(Comparator.comparing(p -> p.set().startedAt().toInstant()));
        return parties;
    }

    private SetInside inside(Party party, AirHour airNow) {
        var profile = profiles.apply(party.species());
        var start = party.set().startedAt().toInstant();
        var history = air.history(party.loads().getFirst(), party.species(), start, now);
        var eggs = history.stream()
                .map(h -> new Warmth(h.from(), h.to(), h.air().temperature().celsius()))
                .toList();
        double stored = party.storedDays();
        var learnt = learnt(party);
        var weighed = party.loads().stream()
                .flatMap(load -> MassSeries.of(load).stream())
                .toList();
        var loss = LossReckoning.of(
                party.set().name(),
                party.species(),
                start,
                now,
                weighed,
                history,
                past(party.species()).shells());
        var hatch = HatchClock.of(profile, start, now, eggs, airNow.air().temperature(), stored, learnt);
        return new SetInside(
                party.set().name(),
                party.species(),
                Math.toIntExact(ChronoUnit.DAYS.between(
                        party.set().setOn(), picture.farm().habits().clock().dateOf(now.atOffset(ZoneOffset.UTC)))),
                party.eggs(),
                stored,
                start,
                start.plusMillis(Math.round(HatchClock.middleDays(profile) * MILLIS_PER_DAY)),
                hatch,
                learnt,
                loss,
                StorageLoss.of(stored, air.beforeSet(start, stored), loss.shells()),
                ahead(
                        loss,
                        airNow.air(),
                        start.plusMillis(Math.round(profile.transferDay().value() * MILLIS_PER_DAY)),
                        hatch.firstPip().likely()),
                airNow.warmth(),
                history.stream().filter(h -> h.warmth() != KnownBy.SET_POINT).count(),
                history.size());
    }

    private List<LossAhead> ahead(SetLoss loss, MoistAir air, Instant transfer, Instant pip) {
        var ahead = new ArrayList<LossAhead>();
        if (transfer.isAfter(now) && transfer.isBefore(pip)) {
            ahead.add(new LossAhead(LossAhead.Point.TRANSFER, transfer, loss.after(air, days(transfer))));
        }
        if (pip.isAfter(now)) {
            ahead.add(new LossAhead(LossAhead.Point.PIP, pip, loss.after(air, days(pip))));
        }
        return ahead;
    }

    private double days(Instant until) {
        return Duration.between(now, until).toMillis() / MILLIS_PER_DAY;
    }

    /** Eggs that are in the hatcher go by it; others by the only one that has hatched any, or by the farm. */
    private Learnt learnt(Party party) {
        var seen = hatches();
        var byMachine = LearntOffsets.of(seen);
        var own = party.isInSetter()
                ? ""
                : PastHatches.hatcher(party.loads().getFirst())
                        .map(MachineName::text)
                        .orElse("");
        var learnt = byMachine.get(own);
        if (learnt != null) {
            return learnt;
        }
        return byMachine.size() == 1 && own.isEmpty()
                ? byMachine.values().iterator().next()
                : LearntOffsets.ofAnother(seen);
    }

    private List<HatchSeen> hatches() {
        var known = hatches;
        if (known == null) {
            known = new PastHatches(air, profiles, now).of(picture.sets().values());
            hatches = known;
        }
        return known;
    }

    /** What earlier sets of the species tell. A set that is still on its way to the band tells nothing of itself here. */
    private FarmPast past(Species species) {
        var known = past.get(species);
        if (known != null) {
            return known;
        }
        var fresh = FarmPast.of(
                species, new PastSets(air, now).of(species, picture.sets().values()));
        past.put(species, fresh);
        return fresh;
    }

    private Advising.InMachine advised(Party party, SetInside inside) {
        var aim = past(party.species()).aim();
        double transfer = profiles.apply(party.species()).transferDay().value();
        // What lies beyond the transfer is the hatcher's; the band is then taken on the day of transfer.
        double day = Math.min(aim.band().byDay(), transfer);
        var onDay = day < aim.band().byDay() ? new Aim(aim.band().onDay(day), aim.source(), aim.bestSets()) : aim;
        return new Advising.InMachine(
                inside.loss(), onDay, inside.startedAt().plusMillis(Math.round(day * MILLIS_PER_DAY)), inside.eggs());
    }
}
