package eggwright.today.eggroom;

import eggwright.book.picture.PenPicture;
import eggwright.book.picture.ShelfKey;
import eggwright.book.picture.Stored;
import eggwright.trade.SpeciesProfile;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * Eggs of one pen and one run of lay dates, waiting.
 *
 * @param youngestDays age of the last laid of them; absent where no lay date was noted
 * @param oldestDays age of the first laid of them; absent where no lay date was noted
 * @param storage by the oldest of them
 */
public record EggLot(
        ShelfKey key,
        Stored stored,
        @Nullable Integer youngestDays,
        @Nullable Integer oldestDays,
        Storage storage,
        Sires sires) {
    /**
     * Which to set first: those within the advice, oldest first, since they would be the next to overstep it; then those
     * of unknown age; then those past it, freshest first, since each day costs hatch; those past the limit last.
     */
    public static final Comparator<EggLot> SET_FIRST = Comparator.<EggLot>comparingInt(EggLot::turn)
            .thenComparingInt(EggLot::withinTurn)
            .thenComparing(EggLot::key)
            .thenComparing(l -> l.stored().laidTo(), Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparingInt(EggLot::eggs);

    static EggLot of(ShelfKey key, Stored stored, @Nullable PenPicture pen, SpeciesProfile profile, LocalDate on) {
        var from = stored.laidFrom() == null ? stored.laidTo() : stored.laidFrom();
        var to = stored.laidTo() == null ? stored.laidFrom() : stored.laidTo();
        var sires = Sires.of(pen, from, to);
        if (from == null || to == null) {
            return new EggLot(key, stored, null, null, Storage.AGE_NOT_KNOWN, sires);
        }
        int oldest = days(from, on);
        var storage = Storage.of(
                oldest,
                profile.storageAdvisedDays().value(),
                profile.storageLimitDays().value());
        return new EggLot(key, stored, days(to, on), oldest, storage, sires);
    }

    public int eggs() {
        return stored.eggs();
    }

    /** Eggs noted as laid after the day of the sheet are as fresh as can be. */
    private static int days(LocalDate laid, LocalDate on) {
        return (int) Math.max(0, ChronoUnit.DAYS.between(laid, on));
    }

    private int turn() {
        return switch (storage) {
            case WITHIN, NEAR_ADVISED -> 0;
            case AGE_NOT_KNOWN -> 1;
            case OVER_ADVISED, NEAR_LIMIT -> 2;
            case OVER_LIMIT -> 3;
        };
    }

    private int withinTurn() {
        int age = oldestDays == null ? 0 : oldestDays;
        return turn() == 0 ? -age : age;
    }
}
