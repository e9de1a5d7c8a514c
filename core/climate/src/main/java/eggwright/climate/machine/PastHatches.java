package eggwright.climate.machine;

import eggwright.book.name.MachineName;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Place;
import eggwright.book.picture.SetPicture;
import eggwright.climate.development.HatchClock;
import eggwright.climate.development.HatchSeen;
import eggwright.climate.development.HatchSeen.PullSeen;
import eggwright.climate.development.Learnt;
import eggwright.climate.development.Warmth;
import eggwright.climate.machine.MachineAir.Stage;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The farm's own take-offs, beside what the clock had said of each set: those that are over. Counts by tray are of the tray's species; counts
 * of a whole set count where nearly all of it is of one. Counts that were taken for a basket of several sets are left out,
 * for nobody knows whose chicks they were.
 */
final class PastHatches {
    /** The latest so many: older ones say less of the machine as it is, and cost time. */
    private static final int MOST = 16;

    private static final double MINUTES_PER_HOUR = 60;
    /** Ours: a fifth of another species moves the middle of a hatch by an hour or two. */
    private static final double NEARLY_ALL = 0.8;

    private final MachineAir air;
    private final Function<Species, SpeciesProfile> profiles;
    private final Instant now;

    PastHatches(MachineAir air, Function<Species, SpeciesProfile> profiles, Instant now) {
        this.air = air;
        this.profiles = profiles;
        this.now = now;
    }

    List<HatchSeen> of(Collection<SetPicture> sets) {
        var seen = new ArrayList<HatchSeen>();
        var latest = sets.stream()
                .filter(set -> set.takenOffAt() != null && !set.isRunning())
                .sorted(Comparator.comparing((SetPicture s) -> s.startedAt().toInstant())
                        .reversed())
                .limit(MOST)
                .toList();
        for (var set : latest) {
            pulls(set).forEach((species, pulls) -> {
                if (pulls.stream().mapToInt(PullSeen::chicks).sum() > 0) {
                    seen.add(seen(set, species, pulls));
                }
            });
        }
        return seen;
    }

    /** Chicks counted by tray are of the tray's species; those counted for the whole set, of the species of nearly all. */
    private static Map<Species, List<PullSeen>> pulls(SetPicture set) {
        var mostly = mostly(set);
        var pulls = new TreeMap<Species, List<PullSeen>>();
        for (var pull : set.pulls()) {
            var counted = pull.what().counted();
            var tray = counted.tray();
            var species = tray == null
                    ? counted.set() == null ? Optional.<Species>empty() : mostly
                    : set.load(tray).map(Party::species);
            species.ifPresent(one -> pulls.computeIfAbsent(one, s -> new ArrayList<>())
                    .add(new PullSeen(
                            pull.at().toInstant(),
                            pull.what().saleable() + pull.what().culled())));
        }
        pulls.values().forEach(each -> each.sort(Comparator.comparing(PullSeen::at)));
        return pulls;
    }

    /** The species of nearly all its eggs; empty where two share it, for their chicks come at different hours. */
    private static Optional<Species> mostly(SetPicture set) {
        var eggs = new TreeMap<Species, Integer>();
        for (var load : set.loads().values()) {
            load.parcels().forEach(parcel -> eggs.merge(parcel.lot().species(), parcel.eggs(), Integer::sum));
        }
        int all = eggs.values().stream().mapToInt(Integer::intValue).sum();
        return eggs.entrySet().stream()
                .filter(one -> one.getValue() >= NEARLY_ALL * all)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private HatchSeen seen(SetPicture set, Species species, List<PullSeen> pulls) {
        var load = set.loads().values().stream()
                .filter(one -> Party.species(one) == species)
                .findFirst()
                .orElseThrow();
        var profile = profiles.apply(species);
        var window = profile.hatchWindowDays().value();
        var start = set.startedAt().toInstant();
        var until = pulls.getFirst().at();
        var party = new Party(set, species, List.copyOf(set.loads().values()));
        var eggs = air.history(load, species, start, until).stream()
                .map(h -> new Warmth(h.from(), h.to(), h.air().temperature().celsius()))
                .toList();
        var clock = HatchClock.of(
                profile,
                start,
                now,
                eggs,
                air.setPoint(species, Stage.HATCHER).temperature(),
                party.storedDays(),
                new Learnt(0, 0, 0));
        double hours = Duration.ofMinutes(Math.round((window.high() - window.low()) * 24 * MINUTES_PER_HOUR))
                        .toMinutes()
                / MINUTES_PER_HOUR;
        return new HatchSeen(
                hatcher(load).map(MachineName::text).orElse(""),
                clock.middle().likely(),
                Math.max(1, hours),
                sameMomentsTogether(pulls));
    }

    /** Trays that were pulled in one go are one pull. */
    private static List<PullSeen> sameMomentsTogether(List<PullSeen> pulls) {
        var together = new ArrayList<PullSeen>();
        for (var pull : pulls) {
            boolean isSame = !together.isEmpty()
                    && Duration.between(together.getLast().at(), pull.at()).toHours() < 2;
            if (isSame) {
                var before = together.removeLast();
                together.add(new PullSeen(before.at(), before.chicks() + pull.chicks()));
            } else {
                together.add(pull);
            }
        }
        return together;
    }

    /** Where it stood last. */
    static Optional<MachineName> hatcher(LoadPicture load) {
        return load.place().map(Place::machine);
    }
}
