package eggwright.climate.machine;

import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.SetPicture;
import eggwright.climate.machine.FarmPast.PastSet;
import eggwright.climate.weight.LossReckoning;
import eggwright.climate.weight.MassSeries;
import eggwright.climate.weight.Shells;
import eggwright.trade.LossTarget;
import eggwright.trade.Species;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the farm's earlier sets of a species: those that are over, or at least past the day that the band speaks of. */
final class PastSets {
    /** The latest so many: older ones say less of these hens, and cost time. */
    private static final int MOST = 12;

    private static final double MILLIS_PER_DAY = 86_400_000.0;

    private final MachineAir air;
    private final Instant now;

    PastSets(MachineAir air, Instant now) {
        this.air = air;
        this.now = now;
    }

    List<PastSet> of(Species species, Collection<SetPicture> sets) {
        double day = LossTarget.of(species).value().byDay();
        var past = new ArrayList<PastSet>();
        var latest = sets.stream()
                .sorted(Comparator.comparing((SetPicture s) -> s.startedAt().toInstant())
                        .reversed())
                .toList();
        for (var set : latest) {
            var until = set.startedAt().toInstant().plusMillis(Math.round(day * MILLIS_PER_DAY));
            if (past.size() < MOST && until.isBefore(now)) {
                one(species, set, until).ifPresent(past::add);
            }
        }
        return past;
    }

    private Optional<PastSet> one(Species species, SetPicture set, Instant until) {
        var loads = set.loads().values().stream()
                .filter(load -> Party.species(load) == species)
                .toList();
        var weighed =
                loads.stream().flatMap(load -> MassSeries.of(load).stream()).toList();
        if (weighed.stream().noneMatch(series -> series.masses().size() > 1)) {
            return Optional.empty();
        }
        var start = set.startedAt().toInstant();
        var loss = LossReckoning.of(
                set.name(),
                species,
                start,
                until,
                weighed,
                air.history(loads.getFirst(), species, start, until),
                Shells.published(species));
        return loss.shells().from() == Shells.From.WEIGHED
                ? Optional.of(new PastSet(loss.shells().share(), loss.now().pct(), hatchOfFertile(set, loads)))
                : Optional.empty();
    }

    /** Known of this species where it was alone in the set and the set is over, and its eggs were not pooled with another's. */
    private static OptionalDouble hatchOfFertile(SetPicture set, List<LoadPicture> loads) {
        var account = set.account();
        if (set.takenOffAt() == null
                || set.isRunning()
                || set.species().size() > 1
                || loads.size() < set.loads().size()
                || account.eggsSet() != set.eggsSet()) {
            return OptionalDouble.empty();
        }
        int fertile = account.eggsSet() - account.eggs(Fate.INFERTILE) - account.eggs(Fate.CLEAR_UNOPENED);
        return fertile == 0 || hasLost(account)
                ? OptionalDouble.empty()
                : OptionalDouble.of(100.0 * account.eggs(Fate.SALEABLE) / fertile);
    }

    /** Eggs that nobody sorted would make the share a guess. */
    private static boolean hasLost(EggAccount account) {
        return account.eggs(Fate.REMOVED_UNSORTED) * 20 > account.eggsSet();
    }
}
