package eggwright.book.fold;

import eggwright.book.entry.EggsCounted;
import eggwright.book.entry.EggsDiscarded;
import eggwright.book.entry.EggsEaten;
import eggwright.book.entry.EggsGathered;
import eggwright.book.entry.EggsReceived;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.EggsSold;
import eggwright.book.entry.RejectReason;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.Discrepancy.About;
import eggwright.book.picture.Discrepancy.What.Gone;
import eggwright.book.picture.Discrepancy.What.Untold;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.ShelfKey;
import eggwright.book.picture.ShelfPicture;
import eggwright.book.picture.Stored;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Folds the egg room's account of one pen. Eggs whose lay dates are not named leave oldest first. */
final class ShelfFold implements PartFold<ShelfPicture> {
    private static final Comparator<Stored> OLDEST_FIRST = Comparator.comparing(
                    Stored::laidTo, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(Stored::laidFrom, Comparator.nullsFirst(Comparator.naturalOrder()));

    private final ShelfKey key;
    private final List<Stored> stored = new ArrayList<>();
    private final SortedMap<LocalDate, ShelfPicture.Gathered> gathered = new TreeMap<>();
    private final Map<RejectReason, Integer> rejected = new EnumMap<>(RejectReason.class);
    private final List<Discrepancy> discrepancies = new ArrayList<>();
    private boolean kept;
    private int received;
    private int set;
    private int sold;
    private int eaten;
    private int discarded;

    ShelfFold(ShelfKey key) {
        this.key = key;
    }

    @Override
    public Folded<ShelfPicture> folded() {
        return new Folded<>(
                new ShelfPicture(key, stored, gathered, rejected, received, set, sold, eaten, discarded),
                discrepancies);
    }

    @Override
    public void take(Effective entry) {
        switch (entry.payload()) {
            case EggsGathered it -> {
                put(it.laidFrom(), it.laidTo(), it.kept());
                gathered.merge(
                        it.laidTo(),
                        new ShelfPicture.Gathered(it.kept(), it.rejectedCount()),
                        (a, b) -> new ShelfPicture.Gathered(a.kept() + b.kept(), a.rejected() + b.rejected()));
                it.rejected().forEach(r -> rejected.merge(r.why(), r.eggs(), Integer::sum));
            }
            case EggsReceived it -> {
                put(it.laidFrom(), it.laidTo(), it.eggs());
                received += it.eggs();
            }
            case EggsSold it -> {
                out(entry, it.laidFrom(), it.laidTo(), it.eggs(), Gone.SOLD);
                sold += it.eggs();
            }
            case EggsEaten it -> {
                out(entry, it.laidFrom(), it.laidTo(), it.eggs(), Gone.EATEN);
                eaten += it.eggs();
            }
            case EggsDiscarded it -> {
                out(entry, it.laidFrom(), it.laidTo(), it.eggs(), Gone.DISCARDED);
                discarded += it.eggs();
            }
            case EggsCounted it -> counted(entry, it);
            case EggsSet it -> {
                for (var load : it.loads()) {
                    for (var lot : load.lots()) {
                        if (Objects.equals(lot.pen(), key.pen()) && lot.species() == key.species()) {
                            out(entry, lot.laidFrom(), lot.laidTo(), lot.eggs(), Gone.SET);
                            set += lot.eggs();
                        }
                    }
                }
            }
            default -> {
                // No other kind touches the egg room.
            }
        }
    }

    private void put(@Nullable LocalDate from, @Nullable LocalDate to, int eggs) {
        kept = true;
        if (eggs > 0) {
            stored.add(new Stored(from, to, eggs));
            stored.sort(OLDEST_FIRST);
        }
    }

    private void out(Effective entry, @Nullable LocalDate from, @Nullable LocalDate to, int eggs, Gone how) {
        int left = draw(from, to, eggs);
        if (left > 0 && from != null) {
            // The dates named are not there: take the oldest rather than lose count.
            left = draw(null, null, left);
        }
        if (left > 0 && kept) {
            discrepancies.add(new Discrepancy(
                    DiscrepancyKind.EGG_ROOM_SHORT, List.of(entry.id()), about(), eggs, eggs - left, how));
        }
    }

    private int draw(@Nullable LocalDate from, @Nullable LocalDate to, int eggs) {
        int left = eggs;
        for (int i = 0; i < stored.size() && left > 0; i++) {
            var here = stored.get(i);
            if (overlaps(here, from, to)) {
                int taken = Math.min(left, here.eggs());
                left -= taken;
                stored.set(i, new Stored(here.laidFrom(), here.laidTo(), here.eggs() - taken));
            }
        }
        stored.removeIf(s -> s.eggs() == 0);
        return left;
    }

    private static boolean overlaps(Stored here, @Nullable LocalDate from, @Nullable LocalDate to) {
        var after = from != null && here.laidTo() != null && here.laidTo().isBefore(from);
        var before = to != null && here.laidFrom() != null && here.laidFrom().isAfter(to);
        return !after && !before;
    }

    /** A hand count is the truth from then on: a shortage leaves oldest first, a surplus has no dates. */
    private void counted(Effective entry, EggsCounted it) {
        int held = stored.stream().mapToInt(Stored::eggs).sum();
        if (held == it.eggs()) {
            return;
        }
        if (kept) {
            discrepancies.add(new Discrepancy(
                    DiscrepancyKind.EGG_ROOM_COUNT_DIFFERS,
                    List.of(entry.id()),
                    about(),
                    it.eggs(),
                    held,
                    Untold.UNTOLD));
        }
        if (held > it.eggs()) {
            draw(null, null, held - it.eggs());
        } else {
            put(null, null, it.eggs() - held);
        }
    }

    private About about() {
        return new About.Shelf(key);
    }
}
