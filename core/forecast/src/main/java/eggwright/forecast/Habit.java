package eggwright.forecast;

import eggwright.forecast.history.Came;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.StageKind;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * On which days this farm looks at eggs of a species.
 *
 * @param firstLook 0 where it does not look
 * @param laterLooks days of second and later looks that most finished sets had
 */
record Habit(int firstLook, List<Integer> laterLooks) {
    /** The customary first look, until the farm has shown its own. */
    private static final int CUSTOM = 8;

    static Habit of(Species species, List<Passage> passages) {
        var firsts = new ArrayList<Integer>();
        var laters = new TreeMap<Integer, Integer>();
        int finished = 0;
        int unlooked = 0;
        for (var passage : passages) {
            var looks = passage.stage(StageKind.SET_TO_FIRST_LOOK, species);
            looks.stream().map(Came::toDay).findFirst().ifPresent(firsts::add);
            if (passage.progress() == Passage.Progress.FINISHED) {
                finished++;
                if (looks.isEmpty()) {
                    unlooked++;
                }
                passage.stage(StageKind.LOOK_TO_LOOK, species).stream()
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

    /** The day on which a stage begins here. */
    int from(StageKind kind) {
        return switch (kind) {
            case SET_TO_FIRST_LOOK, SET_TO_CHICK -> 0;
            case LOOK_TO_LOOK -> firstLook;
            case LAST_LOOK_TO_CHICK -> laterLooks.isEmpty() ? Math.max(1, firstLook) : laterLooks.getLast();
        };
    }

    /** The day on which a stage ends here; 0 for chicks. */
    int to(StageKind kind) {
        return switch (kind) {
            case SET_TO_FIRST_LOOK -> Math.max(1, firstLook);
            case LOOK_TO_LOOK -> laterLooks.isEmpty() ? Math.max(1, firstLook) : laterLooks.getFirst();
            case LAST_LOOK_TO_CHICK, SET_TO_CHICK -> 0;
        };
    }
}
