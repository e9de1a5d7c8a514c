package eggwright.invented.season;

import eggwright.book.entry.EggsGathered;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Payload;
import eggwright.book.entry.TakenOff;
import eggwright.invented.chance.Draw;
import java.util.random.RandomGenerator;

/** Slips of the finger: a digit too high, one finding pressed for another. */
final class Slip {
    private Slip() {}

    static Payload of(Payload right, RandomGenerator random) {
        return switch (right) {
            case EggsGathered it ->
                new EggsGathered(
                        it.pen(), it.species(), it.laidFrom(), it.laidTo(), near(it.kept(), random), it.rejected());
            case Looked it ->
                new Looked(
                        it.scope(),
                        it.lookedAt(),
                        it.countedBefore(),
                        it.findings().stream()
                                .map(f -> f.finding() == Finding.LIVE
                                        ? FindingCount.left(Finding.LIVE, near(f.seen(), random))
                                        : f)
                                .toList(),
                        it.removedUnsorted(),
                        it.minutesOut());
            case TakenOff it ->
                new TakenOff(
                        it.counted(),
                        it.pull(),
                        near(it.saleable(), random),
                        it.culled(),
                        it.deadInBasket(),
                        it.pippedAliveLeft());
            default -> right;
        };
    }

    private static int near(int right, RandomGenerator random) {
        int off = Draw.chance(random, 0.4) ? 10 : Draw.between(random, 1, 3);
        return right >= off && Draw.chance(random, 0.5) ? right - off : right + off;
    }
}
