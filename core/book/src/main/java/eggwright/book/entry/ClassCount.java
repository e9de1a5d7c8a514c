package eggwright.book.entry;

import eggwright.trade.BreakOutClass;

/** How many opened eggs showed one class. */
public record ClassCount(BreakOutClass what, int eggs) {
    public ClassCount {
        Checks.count("Opened as " + what.word(), eggs);
    }
}
