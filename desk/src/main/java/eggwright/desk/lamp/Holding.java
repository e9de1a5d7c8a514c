package eggwright.desk.lamp;

import eggwright.book.name.DeviceName;
import eggwright.wire.PhoneHolding.State;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Who has which tray in the hand right now, as far as phones within reach have said. Not part of the book: it is forgotten
 * when it is old, and when the desk stops.
 */
final class Holding {
    /** Longer than the longest work on a tray, shorter than a day's round. */
    private static final Duration REMEMBERED = Duration.ofHours(2);

    private final Map<Key, Said> said = new ConcurrentHashMap<>();

    private record Key(String set, String tray) {}

    private record Said(DeviceName device, String who, State state, Instant at) {}

    /** Who has, or did, a tray. */
    record Held(String set, String tray, String who, State state) {}

    void say(DeviceName device, String who, String set, String tray, State state, Instant now) {
        said.put(new Key(set, tray), new Said(device, who, state, now));
        said.values().removeIf(s -> s.at().plus(REMEMBERED).isBefore(now));
    }

    /** What the others have: what a device said itself is left out. */
    List<Held> others(DeviceName device, Instant now) {
        return said.entrySet().stream()
                .filter(e -> !e.getValue().device().equals(device))
                .filter(e -> e.getValue().at().plus(REMEMBERED).isAfter(now))
                .map(e -> new Held(
                        e.getKey().set(),
                        e.getKey().tray(),
                        e.getValue().who(),
                        e.getValue().state()))
                .sorted(Comparator.comparing(Held::set).thenComparing(Held::tray))
                .toList();
    }
}
