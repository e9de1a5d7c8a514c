package eggwright.book.entry;

import eggwright.book.name.PenName;
import eggwright.trade.Species;

/** A breeding pen was put together. */
public record PenOpened(PenName pen, Species species, int cocks, int hens, String note) implements Payload {
    public PenOpened {
        Checks.count("Cocks", cocks);
        Checks.count("Hens", hens);
        note = Checks.text("Note", note);
    }
}
