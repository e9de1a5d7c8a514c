package eggwright.book.entry;

import eggwright.book.name.PenName;

/** Birds of a pen came, went, died, were exchanged or were counted. */
public record PenChanged(PenName pen, PenChange change, int cocks, int hens, String why) implements Payload {
    public PenChanged {
        Checks.count("Cocks", cocks);
        Checks.count("Hens", hens);
        why = Checks.text("Why", why);
    }
}
