package eggwright.rates;

import eggwright.book.picture.Fate;
import eggwright.stats.doublesampling.OpenedClears;
import eggwright.trade.Stage;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What one group gathers over all accounts. */
final class GroupSum {
    /** So many of so many. */
    static final class Sum {
        long count;
        long of;

        void add(long more, long ofMore) {
            count += more;
            of += ofMore;
        }

        Rate rate() {
            return new Rate(count, of);
        }
    }

    final List<String> keys;
    int eggsSet;
    int countedWithOthers;
    int fromOthers;
    final Map<Fate, Integer> fates = new EnumMap<>(Fate.class);
    final Sum fertility = new Sum();
    final Sum apparent = new Sum();
    final Sum hatchOfSet = new Sum();
    final Sum hatchOfFertile = new Sum();
    final Sum chicksOfSet = new Sum();
    final Sum saleableShare = new Sum();
    private final Map<Stage, Sum> ofFertile = new EnumMap<>(Stage.class);
    private final Map<Stage, Sum> ofSet = new EnumMap<>(Stage.class);
    final List<Rate> fertilityUnits = new ArrayList<>();
    final List<Rate> apparentUnits = new ArrayList<>();
    final List<Rate> hatchOfFertileUnits = new ArrayList<>();
    long undeterminedAtMost;
    long unopened;
    long clears;
    long clearsAtLamp;
    long clearsOpened;
    long infertileOpened;
    boolean anyOpened;

    GroupSum(List<String> keys) {
        this.keys = keys;
    }

    Sum ofFertile(Stage stage) {
        return ofFertile.computeIfAbsent(stage, s -> new Sum());
    }

    Sum ofSet(Stage stage) {
        return ofSet.computeIfAbsent(stage, s -> new Sum());
    }

    GroupRates rates() {
        var fertile = fertility.rate();
        var low = new Rate(Math.max(0, fertile.count() - undeterminedAtMost), fertile.of());
        return new GroupRates(
                Keys.joined(keys),
                keys,
                eggsSet,
                fates,
                countedWithOthers,
                fromOthers,
                basis(),
                fertile,
                new FertilityBounds(low, fertile),
                apparent.rate(),
                openedClears(),
                hatchOfSet.rate(),
                hatchOfFertile.rate(),
                chicksOfSet.rate(),
                saleableShare.rate(),
                Stage.losses().stream().map(this::loss).toList());
    }

    private StageLoss loss(Stage stage) {
        return new StageLoss(
                stage,
                fates.getOrDefault(RateReport.fate(stage), 0),
                ofFertile(stage).rate(),
                ofSet(stage).rate());
    }

    private Basis basis() {
        if (unopened == 0 && anyOpened) {
            return Basis.OPENED;
        }
        return clearsAtLamp > unopened ? Basis.MIXED : Basis.APPARENT;
    }

    private @Nullable OpenedClears openedClears() {
        return clearsOpened == 0 ? null : new OpenedClears(fertility.of, clears, clearsOpened, infertileOpened);
    }
}
