package eggwright.book.fold;

import eggwright.book.entry.Pull;
import eggwright.book.entry.TakenOff;
import eggwright.book.picture.Fate;
import java.util.List;

/** Chicks taken out of the hatcher, in one or several pulls. */
final class TakingOff {
    private final Loads loads;
    private final Pools pools;
    private final Opening opening;
    private final SetStories stories;
    private final Doubts doubts;

    TakingOff(Loads loads, Pools pools, Opening opening, SetStories stories, Doubts doubts) {
        this.loads = loads;
        this.pools = pools;
        this.opening = opening;
        this.stories = stories;
        this.doubts = doubts;
    }

    void takeOff(Effective entry, TakenOff it) {
        var named = loads.named(entry, it.counted());
        if (named.isEmpty()) {
            return;
        }
        named.stream().map(l -> l.ref.set()).distinct().forEach(set -> stories.pull(set, entry, it));
        var about = it.counted();
        int day = Loads.day(named.getFirst(), entry);
        int held = pools.most(pools.in(it.counted()));
        var counts = List.of(
                new Pools.Leaving(Fate.SALEABLE, it.saleable()),
                new Pools.Leaving(Fate.CULLED, it.culled()),
                new Pools.Leaving(Fate.DEAD_IN_BASKET, it.deadInBasket()),
                new Pools.Leaving(Fate.PIPPED_ALIVE_LEFT, it.pippedAliveLeft()));
        for (var missing : pools.take(it.counted(), counts, entry.id(), day, day)) {
            int late = opening.takeLate(it.counted(), missing, entry.id(), day);
            if (late < missing.eggs()) {
                doubts.moreOutThanIn(entry, about, new Pools.Leaving(missing.fate(), missing.eggs() - late), held);
            }
        }
        if (it.pull() == Pull.LAST) {
            pools.lastPull(it.counted(), entry.id(), day);
            named.forEach(l -> stories.lastPull(l.ref.set(), entry));
        }
    }
}
