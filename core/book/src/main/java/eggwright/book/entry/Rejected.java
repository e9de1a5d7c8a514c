package eggwright.book.entry;

/** Eggs put aside at gathering, and why. */
public record Rejected(RejectReason why, int eggs) {
    public Rejected {
        Checks.count("Rejected " + why.word(), eggs);
    }
}
