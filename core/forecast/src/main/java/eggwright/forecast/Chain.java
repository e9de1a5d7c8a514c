package eggwright.forecast;

import eggwright.forecast.history.Came;
import eggwright.forecast.history.FirstCurve;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.StageKind;
import eggwright.forecast.level.Counts;
import eggwright.forecast.level.LevelFilter;
import eggwright.forecast.level.Observed;
import eggwright.forecast.level.PenOffsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** The stages of one species on one farm, learnt, and the futures of its running sets. */
final class Chain {
    private final List<Passage> passages;
    private final FirstCurve curve;
    private final Map<StageKind, LevelFilter> levels = new EnumMap<>(StageKind.class);
    private final Map<StageKind, PenOffsets> pens = new EnumMap<>(StageKind.class);
    private final int firstRunning;
    private final Habit habit;

    private Chain(List<Passage> passages, FirstCurve curve) {
        this.passages = passages;
        this.curve = curve;
        this.habit = Habit.of(passages);
        int first = passages.size();
        for (int i = passages.size() - 1; i >= 0; i--) {
            if (passages.get(i).progress() == Passage.Progress.RUNNING) {
                first = i;
            }
        }
        this.firstRunning = first;
    }

    /** @param passages in order of set day */
    static Chain of(List<Passage> passages, FirstCurve curve) {
        var chain = new Chain(passages, curve);
        if (chain.firstRunning < passages.size()) {
            for (var kind : StageKind.values()) {
                chain.learn(kind);
            }
        }
        return chain;
    }

    private void learn(StageKind kind) {
        var offsets = PenOffsets.of(passages.stream().map(p -> p.stage(kind)).toList());
        var observed = new ArrayList<Observed>();
        for (var passage : passages) {
            var counts = new ArrayList<Observed.Count>();
            for (var came : passage.stage(kind)) {
                counts.add(new Observed.Count(
                        came.of(),
                        came.through(),
                        came.trays(),
                        logit(curve.through(kind, came.fromDay(), came.toDay())) + offsets.of(came.pens())));
            }
            observed.add(new Observed(passage.setOn(), counts));
        }
        pens.put(kind, offsets);
        levels.put(kind, LevelFilter.of(observed));
    }

    private static double logit(double share) {
        return Math.log(share / (1 - share));
    }

    /** For each running set, so many draws of its saleable chicks; draw i of all sets belongs to the same future. */
    Map<Passage, int[]> draw(int draws, SplittableRandom random) {
        var found = new LinkedHashMap<Passage, int[]>();
        for (int i = firstRunning; i < passages.size(); i++) {
            if (passages.get(i).progress() == Passage.Progress.RUNNING) {
                found.put(passages.get(i), new int[draws]);
            }
        }
        if (found.isEmpty()) {
            return found;
        }
        for (int d = 0; d < draws; d++) {
            var futures = new EnumMap<StageKind, LevelFilter.Draw>(StageKind.class);
            for (var level : levels.entrySet()) {
                futures.put(level.getKey(), level.getValue().draw(firstRunning, random));
            }
            for (int i = firstRunning; i < passages.size(); i++) {
                var counts = found.get(passages.get(i));
                if (counts != null) {
                    counts[d] = chicks(passages.get(i), i - firstRunning, futures, random);
                }
            }
        }
        return found;
    }

    private int chicks(Passage passage, int index, Map<StageKind, LevelFilter.Draw> futures, SplittableRandom random) {
        int in = passage.waiting().stream().mapToInt(Passage.Waiting::eggs).sum();
        int before = passage.chicksSoFar();
        if (before == 0) {
            return through(passage, index, futures, random, 1);
        }
        // After a first pull the whole must be at least what was pulled: draw the whole again until it is.
        double whole = (in + before) / (double) Math.max(1, in);
        for (int tries = 0; tries < 50; tries++) {
            int all = through(passage, index, futures, random, whole);
            if (all >= before && all <= before + in) {
                return all;
            }
        }
        return before;
    }

    private int through(
            Passage passage,
            int index,
            Map<StageKind, LevelFilter.Draw> futures,
            SplittableRandom random,
            double grown) {
        int sum = 0;
        for (var waiting : passage.waiting()) {
            int eggs = (int) Math.round(waiting.eggs() * grown);
            int day = waiting.lookedOn();
            if (day == 0 && habit.looks()) {
                eggs = step(StageKind.SET_TO_FIRST_LOOK, eggs, 0, habit.firstLook(), waiting, index, futures, random);
                day = habit.firstLook();
            }
            for (int next : habit.laterLooks()) {
                if (next > day && day > 0) {
                    eggs = step(StageKind.LOOK_TO_LOOK, eggs, day, next, waiting, index, futures, random);
                    day = next;
                }
            }
            var last = day > 0 ? StageKind.LAST_LOOK_TO_CHICK : StageKind.SET_TO_CHICK;
            sum += step(last, eggs, day, 0, waiting, index, futures, random);
        }
        return sum;
    }

    private int step(
            StageKind kind,
            int eggs,
            int fromDay,
            int toDay,
            Passage.Waiting waiting,
            int index,
            Map<StageKind, LevelFilter.Draw> futures,
            SplittableRandom random) {
        var future = futures.get(kind);
        var offsets = pens.get(kind);
        if (future == null || offsets == null) {
            throw new IllegalStateException("Stage " + kind + " was not learnt");
        }
        double logit = logit(curve.through(kind, fromDay, toDay)) + offsets.of(waiting.pens()) + future.offset(index);
        return Counts.through(eggs, logit, future.trayRho(), waiting.trays(), random);
    }

    /**
     * On which days this farm looks.
     *
     * @param firstLook 0 where it does not look
     * @param laterLooks days of second and later looks that most finished sets had
     */
    record Habit(int firstLook, List<Integer> laterLooks) {
        /** The customary first look, until the farm has shown its own. */
        private static final int CUSTOM = 8;

        static Habit of(List<Passage> passages) {
            var firsts = new ArrayList<Integer>();
            var laters = new java.util.TreeMap<Integer, Integer>();
            int finished = 0;
            int unlooked = 0;
            for (var passage : passages) {
                var looks = passage.stage(StageKind.SET_TO_FIRST_LOOK);
                looks.stream().map(Came::toDay).findFirst().ifPresent(firsts::add);
                if (passage.progress() == Passage.Progress.FINISHED) {
                    finished++;
                    if (looks.isEmpty()) {
                        unlooked++;
                    }
                    passage.stage(StageKind.LOOK_TO_LOOK).stream()
                            .map(Came::toDay)
                            .distinct()
                            .forEach(day -> laters.merge(day, 1, Integer::sum));
                }
            }
            if (finished > 0 && unlooked * 2 > finished) {
                return new Habit(0, List.of());
            }
            firsts.sort(null);
            int first = firsts.isEmpty() ? CUSTOM : firsts.get(firsts.size() / 2);
            int half = finished;
            var later = laters.entrySet().stream()
                    .filter(e -> e.getValue() * 2 > half)
                    .map(Map.Entry::getKey)
                    .toList();
            return new Habit(Math.max(1, first), later);
        }

        boolean looks() {
            return firstLook > 0;
        }
    }
}
