package eggwright.book.entry;

import eggwright.book.name.BasketName;
import eggwright.book.name.EntryId;
import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.units.OutOfRange;
import org.jspecify.annotations.Nullable;

/**
 * Which eggs a count speaks of. Each absent part means "all": only a set named is the whole set, counted together.
 *
 * @param set absent only where a basket of several sets was counted
 * @param tray one load of the set
 * @param pen the eggs of one pen (told apart by place, mark or basket)
 * @param basket the eggs in one hatcher basket
 * @param look the eggs taken out at one look, for break-outs of a candling evening
 */
public record Scope(
        @Nullable SetName set,
        @Nullable TrayName tray,
        @Nullable PenName pen,
        @Nullable BasketName basket,
        @Nullable EntryId look) {
    public Scope {
        if (set == null && basket == null) {
            throw new OutOfRange(
                    EntryReason.COUNT_OF_NOTHING, "The count names neither a set nor a basket. Name one of them.");
        }
        if (tray != null && set == null) {
            throw new OutOfRange(
                    EntryReason.TRAY_WITHOUT_SET,
                    "The count names tray " + tray + " but not its set. Name the set.",
                    tray.text());
        }
    }

    public static Scope ofSet(SetName set) {
        return new Scope(set, null, null, null, null);
    }

    public static Scope ofLoad(SetName set, TrayName tray) {
        return new Scope(set, tray, null, null, null);
    }

    public static Scope ofPen(SetName set, PenName pen) {
        return new Scope(set, null, pen, null, null);
    }

    public static Scope ofBasket(BasketName basket) {
        return new Scope(null, null, null, basket, null);
    }

    public Scope withPen(PenName only) {
        return new Scope(set, tray, only, basket, look);
    }

    public Scope withLook(EntryId only) {
        return new Scope(set, tray, pen, basket, only);
    }
}
