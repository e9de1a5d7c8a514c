package eggwright.forecast;

import eggwright.book.name.SetName;
import eggwright.forecast.history.FirstCurve;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.StageKind;
import eggwright.forecast.level.Beforehand;
import eggwright.forecast.level.Grid;
import eggwright.forecast.level.LevelFilter;
import eggwright.forecast.level.Observed;
import eggwright.forecast.level.PenOffsets;
import eggwright.trade.SeasonSlopes;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The stages of one species on one farm, learnt, and the futures of its running sets. */
final class Chain {
    /** Farms drawn to see what the published spread makes of a stage; from a fixed seed. */
    private static final int FARMS = 2000;

    private static final long FARMS_SEED = 0x4661726dL;
    /** The bell that each of those farms stands for, in logits. */
    private static final double FARMS_BELL = 0.12;

    private final Species species;
    private final List<Passage> passages;
    private final FirstCurve curve;
    private final Habit habit;
    private final int firstRunning;
    private final int firstDrawn;
    private final Map<StageKind, LevelFilter> levels = new EnumMap<>(StageKind.class);
    private final Map<StageKind, PenOffsets> pens = new EnumMap<>(StageKind.class);

    private Chain(Species species, List<Passage> passages, FirstCurve curve, Predicate<SetName> wanted) {
        this.species = species;
        this.passages = passages;
        this.curve = curve;
        this.habit = Habit.of(species, passages);
        this.firstRunning = first(any -> true);
        this.firstDrawn = first(wanted);
    }

    private int first(Predicate<SetName> wanted) {
        int first = 0;
        while (first < passages.size()
                && (passages.get(first).waiting(species).isEmpty()
                        || !wanted.test(passages.get(first).set()))) {
            first++;
        }
        return first;
    }

    /**
     * @param passages those with eggs of the species, in order of set day
     * @param wanted which sets will be drawn; others are learnt from all the same
     */
    static Chain of(Species species, List<Passage> passages, FirstCurve curve, Predicate<SetName> wanted) {
        var chain = new Chain(species, passages, curve, wanted);
        if (chain.firstDrawn < passages.size()) {
            var random = new SplittableRandom(FARMS_SEED);
            var farms =
                    Stream.generate(() -> curve.elsewhere(random)).limit(FARMS).toList();
            for (var kind : StageKind.values()) {
                if (chain.needs(kind)) {
                    chain.learn(kind, farms);
                }
            }
        }
        return chain;
    }

    private boolean needs(StageKind kind) {
        boolean looked = passages.stream()
                .skip(firstRunning)
                .flatMap(p -> p.waiting(species).stream())
                .anyMatch(w -> w.lookedOn() > 0);
        return switch (kind) {
            case SET_TO_FIRST_LOOK -> habit.looks();
            case LOOK_TO_LOOK -> !habit.laterLooks().isEmpty();
            case LAST_LOOK_TO_CHICK -> habit.looks() || looked;
            case SET_TO_CHICK -> !habit.looks();
        };
    }

    private void learn(StageKind kind, List<FirstCurve> farms) {
        var offsets =
                PenOffsets.of(passages.stream().map(p -> p.stage(kind, species)).toList());
        var observed = new ArrayList<Observed>();
        var weeks = SeasonWeeks.of(passages.stream().map(Passage::setOn).toList());
        for (int i = 0; i < passages.size(); i++) {
            var passage = passages.get(i);
            var counts = new ArrayList<Observed.Count>();
            for (var came : passage.stage(kind, species)) {
                counts.add(new Observed.Count(
                        came.of(),
                        came.through(),
                        came.trays(),
                        curve.logit(kind, came.fromDay(), came.toDay()) + offsets.of(came.pens())));
            }
            observed.add(new Observed(passage.setOn(), weeks.get(i), counts));
        }
        pens.put(kind, offsets);
        levels.put(kind, LevelFilter.of(observed, firstDrawn, beforehand(kind, farms)));
    }

    /** What the published farms would do, at the days on which this farm looks. */
    private Beforehand beforehand(StageKind kind, List<FirstCurve> farms) {
        int from = habit.from(kind);
        int to = habit.to(kind);
        double expected = curve.logit(kind, from, to);
        var level = Grid.density(
                farms.stream()
                        .mapToDouble(farm -> farm.logit(kind, from, to) - expected)
                        .toArray(),
                FARMS_BELL);
        double leverage = curve.leverage(kind, from, to);
        double slope = (curve.later(1).logit(kind, from, to) - curve.later(-1).logit(kind, from, to)) / 2;
        return new Beforehand(level, slope, leverage * SeasonSlopes.PUBLISHED.spread(), leverage);
    }

    /** One future of this species: the offsets of all its running sets, and the scatter of trays, at every stage. */
    Future future(SplittableRandom random) {
        var draws = new EnumMap<StageKind, LevelFilter.Draw>(StageKind.class);
        // Later sets are drawn first, each stage from a stream of its own: whether earlier sets are drawn changes
        // nothing.
        levels.forEach((kind, level) -> draws.put(kind, level.draw(random.split())));
        return new Future(draws);
    }

    record Future(Map<StageKind, LevelFilter.Draw> draws) {}

    /** The way that the waiting eggs of a set have before them. */
    Ahead ahead(Passage passage) {
        var groups = new ArrayList<Ahead.Group>();
        for (var waiting : passage.waiting(species)) {
            groups.add(new Ahead.Group(waiting.eggs(), waiting.trays(), steps(waiting)));
        }
        return new Ahead(passages.indexOf(passage) - firstDrawn, groups);
    }

    private List<Ahead.Step> steps(Passage.Waiting waiting) {
        var steps = new ArrayList<Ahead.Step>();
        int day = waiting.lookedOn();
        if (day == 0 && habit.looks()) {
            steps.add(step(StageKind.SET_TO_FIRST_LOOK, 0, habit.firstLook(), waiting));
            day = habit.firstLook();
        }
        for (int next : habit.laterLooks()) {
            if (next > day && day > 0) {
                steps.add(step(StageKind.LOOK_TO_LOOK, day, next, waiting));
                day = next;
            }
        }
        steps.add(step(day > 0 ? StageKind.LAST_LOOK_TO_CHICK : StageKind.SET_TO_CHICK, day, 0, waiting));
        return steps;
    }

    private Ahead.Step step(StageKind kind, int fromDay, int toDay, Passage.Waiting waiting) {
        var offsets = pens.get(kind);
        if (offsets == null) {
            throw new IllegalStateException("Stage " + kind + " was not learnt");
        }
        return new Ahead.Step(kind, curve.logit(kind, fromDay, toDay) + offsets.of(waiting.pens()));
    }
}
