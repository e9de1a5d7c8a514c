package eggwright.desk.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.desk.farm.DemoDesk;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

final class StagingRoomTest {
    private static final Path FILE = Path.of("may.csv");

    private final StagingRoom room = new StagingRoom(() -> DemoDesk.NOON, new SplittableRandom(3));

    private String put() {
        return room.watched(FILE, "").orElseThrow().id();
    }

    private boolean isThere(String id) {
        return room.using(id, file -> true).orElse(false);
    }

    /** As while it is being loaded, which takes minutes for a file of years. */
    private <T> T whileUsing(List<String> ids, Supplier<T> then) {
        return ids.isEmpty()
                ? then.get()
                : room.using(ids.getFirst(), file -> whileUsing(ids.subList(1, ids.size()), then))
                        .orElseThrow();
    }

    @Test
    void fileThatIsWorkedOn_isNotThrownOut_theNextOldestIs() {
        var ids = new ArrayList<String>();
        for (int i = 0; i < StagingRoom.MOST; i++) {
            ids.add(put());
        }
        var added = whileUsing(ids.subList(0, 1), this::put);
        assertTrue(isThere(added));
        assertTrue(isThere(ids.getFirst()), "it was being worked on");
        assertEquals(false, isThere(ids.get(1)), "the oldest of the others made way");
        assertTrue(isThere(ids.get(2)));
    }

    @Test
    void whereAllAreWorkedOn_noneMakesWay_untilOneIsDone() {
        var ids = new ArrayList<String>();
        for (int i = 0; i < StagingRoom.MOST; i++) {
            ids.add(put());
        }
        assertEquals(Optional.empty(), whileUsing(ids, () -> room.watched(FILE, "")));
        assertTrue(ids.stream().allMatch(this::isThere));
        assertTrue(room.watched(FILE, "").isPresent());
    }
}
