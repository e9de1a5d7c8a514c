package eggwright.book.entry;

import eggwright.book.name.PenName;

/** A pen was broken up. */
public record PenClosed(PenName pen, String why) implements Payload {
    public PenClosed {
        why = Checks.text("Why", why);
    }
}
