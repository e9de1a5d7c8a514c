package eggwright.invented.season;

import eggwright.book.entry.ClassCount;
import eggwright.trade.BreakOutClass;
import java.util.EnumMap;
import java.util.List;

/** Names opened eggs. */
final class Opened {
    private Opened() {}

    static List<ClassCount> classes(List<Egg> eggs, Bird bird) {
        var counts = new EnumMap<BreakOutClass, Integer>(BreakOutClass.class);
        for (var egg : eggs) {
            counts.merge(egg.opened(bird), 1, Integer::sum);
        }
        return counts.entrySet().stream()
                .map(e -> new ClassCount(e.getKey(), e.getValue()))
                .toList();
    }
}
