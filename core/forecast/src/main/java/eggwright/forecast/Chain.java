package eggwright.forecast;

import eggwright.book.name.PenName;
import eggwright.forecast.chance.Grid;
import eggwright.forecast.chance.LuckScale;
import eggwright.forecast.history.FirstCurve;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.StageKind;
import eggwright.forecast.level.Beforehand;
import eggwright.forecast.level.Observed;
import eggwright.forecast.level.Pen;
import eggwright.forecast.level.StageDraws;
import eggwright.trade.SeasonSlopes;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/** The stages that eggs of one species pass on one farm: what is believed of them beforehand, and what was counted. */
final class Chain {
    /** Farms drawn to see what the published spread makes of a stage; from a fixed seed. */
    private static final int FARMS = 2000;

    /** So many of them say how far luck moves a farm. */
    private static final int MOVED_FARMS = 200;

    private static final long FARMS_SEED = 0x4661726dL;
    /** The bell that each of those farms stands for, in logits. */
    private static final double FARMS_BELL = 0.12;

    private final Species species;
    private final List<Passage> passages;
    private final FirstCurve curve;
    private final Habit habit;
    private final List<FirstCurve> farms;
    private final Map<Passage, Double> weeks = new HashMap<>();
    /** By week. */
    private final Map<Double, FirstCurve> curves = new HashMap<>();

    /** @param passages those with eggs of the species, in order of set day */
    Chain(Species species, List<Passage> passages, FirstCurve curve) {
        this.species = species;
        this.passages = passages;
        this.curve = curve;
        this.habit = Habit.of(species, passages);
        var random = new SplittableRandom(FARMS_SEED);
        this.farms = Stream.generate(() -> curve.elsewhere(random)).limit(FARMS).toList();
        var all = SeasonWeeks.of(passages.stream().map(Passage::setOn).toList());
        for (int i = 0; i < passages.size(); i++) {
            weeks.put(passages.get(i), all.get(i));
        }
    }

    Species species() {
        return species;
    }

    /** Whether eggs that are in machines have this stage before them. */
    boolean needs(StageKind kind) {
        return passes(kind)
                && passages.stream().anyMatch(p -> !p.waiting(species).isEmpty());
    }

    /** Whether eggs of the species pass this stage here. */
    boolean passes(StageKind kind) {
        return switch (kind) {
            case SET_TO_FIRST_LOOK -> habit.looks();
            case LOOK_TO_LOOK -> !habit.laterLooks().isEmpty();
            case LAST_LOOK_TO_CHICK ->
                habit.looks()
                        || passages.stream()
                                .flatMap(p -> p.waiting(species).stream())
                                .anyMatch(w -> w.lookedOn() > 0);
            case SET_TO_CHICK -> !habit.looks();
        };
    }

    boolean isIn(Passage passage) {
        return weeks.containsKey(passage);
    }

    /** What was counted of a set at one stage, and what waits. */
    Observed.Part part(Passage passage, StageKind kind) {
        var counts = new ArrayList<Observed.Count>();
        for (var came : passage.stage(kind, species)) {
            counts.add(new Observed.Count(
                    came.of(),
                    came.through(),
                    came.trays(),
                    curve(passage).logit(kind, came.fromDay(), came.toDay()),
                    pens(came.pens())));
        }
        var waiting = new HashSet<Pen>();
        passage.waiting(species).forEach(w -> waiting.addAll(pens(w.pens()).keySet()));
        return new Observed.Part(week(passage), counts, waiting);
    }

    private double week(Passage passage) {
        return weeks.getOrDefault(passage, 0.0);
    }

    /** What was published, as it changes through the season. */
    private FirstCurve curve(Passage passage) {
        return curves.computeIfAbsent(week(passage), curve::later);
    }

    private Map<Pen, Double> pens(Map<PenName, Double> shares) {
        var pens = new HashMap<Pen, Double>();
        shares.forEach((name, share) -> pens.put(new Pen(species, name), share));
        return pens;
    }

    /** What the published farms would do, at the days on which this farm looks. */
    Beforehand beforehand(StageKind kind) {
        int from = habit.from(kind);
        int to = habit.to(kind);
        var logits =
                farms.stream().mapToDouble(farm -> farm.logit(kind, from, to)).toArray();
        var scale = scale(kind, from, to, logits);
        var level = Grid.density(Arrays.stream(logits).map(scale::place).toArray(), FARMS_BELL);
        return new Beforehand(
                scale,
                level,
                SeasonSlopes.PUBLISHED.spread(),
                curve.pulls(kind, from, to),
                curve.likeness(kind, from, to));
    }

    /** How far luck moves farms that lie elsewhere than the published ones. */
    private LuckScale scale(StageKind kind, int from, int to, double[] logits) {
        double published = length(curve.pulls(kind, from, to));
        if (published == 0) {
            return LuckScale.even();
        }
        return LuckScale.of(
                curve.logit(kind, from, to),
                Arrays.copyOf(logits, MOVED_FARMS),
                farms.stream()
                        .limit(MOVED_FARMS)
                        .mapToDouble(farm -> length(farm.pulls(kind, from, to)) / published)
                        .toArray());
    }

    private static double length(double[] pulls) {
        return Math.sqrt(Arrays.stream(pulls).map(pull -> pull * pull).sum());
    }

    /**
     * The way that the waiting eggs of a set have before them.
     *
     * @param set its place among the farm's
     * @param levels of the farm, by stage
     */
    Ahead ahead(Passage passage, int set, Map<StageKind, StageDraws> levels) {
        var groups = new ArrayList<Ahead.Group>();
        for (var waiting : passage.waiting(species)) {
            var steps = new ArrayList<StageDraws.Eggs>();
            for (var stretch : stretches(waiting.lookedOn())) {
                var draws = levels.get(stretch.kind);
                if (draws == null) {
                    throw new IllegalStateException("Stage " + stretch.kind + " was not drawn");
                }
                double expected = curve(passage).logit(stretch.kind, stretch.fromDay, stretch.toDay);
                steps.add(draws.eggs(set, species, expected, pens(waiting.pens())));
            }
            groups.add(new Ahead.Group(waiting.eggs(), waiting.trays(), steps));
        }
        return new Ahead(groups);
    }

    private record Stretch(StageKind kind, int fromDay, int toDay) {}

    /** The stretches before eggs that were looked at last on a day, 0 where none was. */
    private List<Stretch> stretches(int lookedOn) {
        var stretches = new ArrayList<Stretch>();
        int day = lookedOn;
        if (day == 0 && habit.looks()) {
            stretches.add(new Stretch(StageKind.SET_TO_FIRST_LOOK, 0, habit.firstLook()));
            day = habit.firstLook();
        }
        for (int next : habit.laterLooks()) {
            if (next > day && day > 0) {
                stretches.add(new Stretch(StageKind.LOOK_TO_LOOK, day, next));
                day = next;
            }
        }
        stretches.add(new Stretch(day > 0 ? StageKind.LAST_LOOK_TO_CHICK : StageKind.SET_TO_CHICK, day, 0));
        return stretches;
    }
}
